using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Findings that rest on what the shop has.</summary>
public static class ShopFinding
{
    /// <summary>The finding as it is when the shop is the maker's own; a note that says "assumed shop" when it is the built-in one.</summary>
    public static Finding Of(Shop shop, Finding finding) => shop.IsAssumed
        ? finding with { Severity = Severity.Note, AssumedShop = true, Message = finding.Message + " (Assumed shop: write down your own to be sure.)" }
        : finding;
}
