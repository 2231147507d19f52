namespace Tangwright.Inputs;

/// <summary>The manual page of the shop file, docs/shop-file.md.</summary>
public static class ShopKeysPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Markdown() => KeyPage.Markdown("The shop file", """
        <!-- generated from src/Inputs/Shop/ShopKeys.cs: do not edit by hand -->

        `shop.toml` says what you have: machines, drills, saws, wheels, ovens, quenchant, printers. It is looked for with `--shop`, then beside
        the plan, then in your own settings folder; when there is none a sensible one-person shop is assumed, and findings that rest on it say so.

        Nothing has to be filled in: a heading that is absent is taken from the built-in shop, `data/shop.toml`. A heading or list that is there
        counts as a whole: one `[[wheel]]` of yours replaces all built-in wheels, and `drills` replaces the built-in drills. To say that you have
        none of a kind write an empty list before the first heading, as `saw = []`, or the name `"none"`.

        Lengths are written as in [the plan file](plan-file.md). Drill sizes are written one by one, `"16 mm"`, `"1/4 in"`, `"#30"`, `"F"`, or from
        one to another: `"#1 to #60"`, `"A to Z"`, `"1 mm to 13 mm by 0.5 mm"`, `"1/16 in to 1/2 in by 1/64 in"`.
        """, ShopKeys.Table);
}
