using System.Text;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A scanned drawing under a plan: NAME.background.png or .jpg in the plan's folder, and NAME.background.toml with its place. It is no part of the plan, so undo leaves it alone.</summary>
/// <param name="Picture">Its kind and size.</param>
/// <param name="Place">Where it lies.</param>
/// <param name="Mark">Changes when the picture does, for its address.</param>
public sealed record Background(PictureSize Picture, BackgroundPlace Place, string Mark)
{
    /// <summary>Largest picture taken, bytes.</summary>
    public const int LargestBytes = 20_000_000;

    private const string Png = ".background.png";
    private const string Jpg = ".background.jpg";
    private const string Toml = ".background.toml";

    /// <summary>Whether it is shown.</summary>
    public bool IsShown => Place.Shown;

    /// <summary>How strongly, for a form.</summary>
    public string Strength => Foundation.Shown.Trimmed(Place.StrengthShare, 2);

    /// <summary>Whether it is a PNG; else a JPEG.</summary>
    public bool IsPng => Picture.IsPng;

    /// <summary>That of a plan; null when there is none that can be used.</summary>
    public static Background? Of(DeskFolder folder, PlanOnDesk plan)
    {
        if (Bytes(folder, plan) is not { } bytes || PictureSize.Of(bytes.Bytes) is not { } picture) return null;
        var place = folder.Beside(plan, Toml).Then(TextFile.Read).Then(t => BackgroundPlace.Read(t, plan.Stem + Toml));
        return new(picture, place.IsGood ? place.Value : BackgroundPlace.Under(plan.Results.Plan.Outline.Bounds, picture), bytes.Written.Ticks.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>The picture itself; null when there is none.</summary>
    public static (byte[] Bytes, string Kind, DateTime Written)? Bytes(DeskFolder folder, PlanOnDesk plan)
    {
        foreach (var (ending, kind) in new[] { (Png, "image/png"), (Jpg, "image/jpeg") })
        {
            var path = folder.Beside(plan, ending);
            if (!path.IsGood) continue;
            try
            {
                var file = new System.IO.FileInfo(path.Value);
                if (!file.Exists || file.Length > LargestBytes) continue;
                var bytes = System.IO.File.ReadAllBytes(path.Value);
                if (PictureSize.Of(bytes) is { } size && size.IsPng == (ending == Png)) return (bytes, kind, file.LastWriteTimeUtc);
            }
            catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
            {
                // as if there were none
            }
        }

        return null;
    }

    /// <summary>Lays a picture under a plan in place of any other.</summary>
    public static Checked<Background> Put(DeskFolder folder, PlanOnDesk plan, byte[] bytes)
    {
        if (bytes.Length > LargestBytes) return Bad(plan, $"the picture is larger than {LargestBytes / 1_000_000} MB", "save it smaller");
        if (PictureSize.Of(bytes) is not { } picture) return Bad(plan, $"that is no PNG or JPEG picture of at most {PictureSize.MostPixels} pixels along a side", "scan or save it as PNG or JPEG");
        var place = BackgroundPlace.Under(plan.Results.Plan.Outline.Bounds, picture);
        return folder.Beside(plan, picture.IsPng ? Png : Jpg).Then(path => folder.Beside(plan, Toml).Then(toml =>
        {
            var faults = OutputFolder.Write([new OutputFile(path, bytes), new OutputFile(toml, Encoding.UTF8.GetBytes(place.Text()))], overwrite: true);
            if (faults.Length > 0) return Checked<Background>.Bad(faults);
            TakeAway(folder, plan, picture.IsPng ? [Jpg] : [Png]);
            return Of(folder, plan) is { } there ? Checked<Background>.Good(there) : Bad(plan, "the picture cannot be read again", "try again");
        }));
    }

    /// <summary>At another place.</summary>
    internal Checked<Background> At(Checked<BackgroundPlace> place) => place.Then(p => Checked<Background>.Good(this with { Place = p }));

    /// <summary>Writes where it lies.</summary>
    public Checked<Background> Kept(DeskFolder folder, PlanOnDesk plan)
        => folder.Beside(plan, Toml).Then(toml =>
        {
            var faults = OutputFolder.Write([new OutputFile(toml, Encoding.UTF8.GetBytes(Place.Text()))], overwrite: true);
            return faults.Length > 0 ? Checked<Background>.Bad(faults) : Checked<Background>.Good(this);
        });

    /// <summary>Takes the picture and its place away from the folder.</summary>
    public static void TakeAway(DeskFolder folder, PlanOnDesk plan) => TakeAway(folder, plan, [Png, Jpg, Toml]);

    private static void TakeAway(DeskFolder folder, PlanOnDesk plan, ReadOnlySpan<string> endings)
    {
        foreach (var ending in endings)
        {
            var path = folder.Beside(plan, ending);
            if (!path.IsGood) continue;
            try
            {
                System.IO.File.Delete(path.Value);
            }
            catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
            {
                // it stays where it is
            }
        }
    }

    private static Checked<Background> Bad(PlanOnDesk plan, string message, string remedy) => Checked<Background>.Bad(Fault.OfFile(plan.Stem, message, remedy));
}
