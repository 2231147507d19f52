using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A square-edged block; the grain runs along its length.</summary>
/// <param name="Long">Length.</param>
/// <param name="Wide">Width.</param>
/// <param name="Thick">Thickness.</param>
public readonly record struct BlockSize(Length Long, Length Wide, Length Thick)
{
    /// <summary>Its volume.</summary>
    public Volume Volume => Long * Wide * Thick;
}
