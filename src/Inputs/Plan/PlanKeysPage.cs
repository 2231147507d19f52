namespace Tangwright.Inputs;

/// <summary>The manual page of the plan file, docs/plan-file.md.</summary>
public static class PlanKeysPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Markdown() => KeyPage.Markdown("The plan file", """
        <!-- generated from src/Inputs/Plan/PlanKeys.cs: do not edit by hand -->

        One file, `NAME.plan.toml`, holds one pattern. It is plain text (TOML): `key = value` under `[heading]`, remarks begin with `#`.
        The files in `examples/` are whole plans with remarks; start from one of them.

        **Lengths.** A bare number is in the file's `units`. A text carries its own unit: `"6.35 mm"`, `"1/4 in"`, `"1 1/8 in"`, `'3/8"'`.
        A pair may mix: `["4 in", 18]`. Diameters may also be drills: `"#30"`, `"F"`. Refused, with what to write instead: a decimal comma,
        `1-1/8`, a fraction without its unit, inf and nan.

        **Axes.** x runs along the piece, y up; the origin is where you like.

        **Angles** are in degrees, per side where the key says so. **Weights** carry g, kg, oz or lb. **Tolerances** are written `+/-`.

        Only `tangwright`, `name`, `units`, `[stock]` with steel and thickness, and `[outline]` must be there. What depends on a key that is
        absent is left out, not guessed. A key or heading that is not in the tables below is a mistake, and so is a name that stands twice.
        When the program changes a plan it changes the value where it stands: remarks, order, quotes and the unit you wrote stay.
        """, PlanKeys.Table);
}
