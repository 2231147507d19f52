using System.Collections.Immutable;

namespace Tangwright.Desk;

/// <summary>The pages every plan has, in the order they are offered. A new page adds its line here.</summary>
internal static class PagesOfPlan
{
    /// <summary>End of the address after the plan's own, and what the link says.</summary>
    public static ImmutableArray<(string Ending, string Says)> All { get; } =
    [
        ("", "Drawing"),
        ("/values", "In figures"),
        ("/balance", "Balance"),
        ("/stock", "Bars"),
        ("/rough-cuts", "Rough cuts"),
        ("/drilling", "Drilling"),
        ("/fits", "Pins and fits"),
        ("/program", "Program for the mill"),
        ("/assembly", "Will it go together"),
        ("/order-of-holes", "Order of holes"),
        ("/bevels", "Bevels"),
        ("/heat", "Heat"),
        ("/finish", "Finish"),
        ("/handle", "Handle"),
        ("/sheets", "Sheets for the bench"),
        ("/measured", "Measured holes"),
        ("/solid", "Solid"),
        ("/revisions", "Revisions"),
        ("/shop", "Shop"),
    ];
}
