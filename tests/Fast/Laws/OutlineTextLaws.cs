using System.Globalization;
using System.Text;
using CsCheck;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>However a maker or a program wrote the path (any command, counted from the start or from the step before, letters left out, numbers run together), a change touches the segments meant and no others.</summary>
public class OutlineTextLaws
{
    private static readonly Gen<string> PathText = Gen.Select(Gen.Int[0, 17].Array[3, 9], Gen.Int[-20, 20].Array[80], Gen.Bool, Gen.Bool).Select((kinds, numbers, compact, closed) => Written(kinds, numbers, compact, closed));

    private static readonly Gen<Func<PlanFile, int, Checked<PlanFile>>> Change = Gen.OneOf(
        Gen.Double[0.1, 0.9].Select(t => new Func<PlanFile, int, Checked<PlanFile>>((f, i) => OutlineEdit.AddPoint(f, f.Plan.Outline.Segments[i].At(t)))),
        Gen.Const<Func<PlanFile, int, Checked<PlanFile>>>(OutlineEdit.RemovePoint),
        Gen.Enum<SegmentKind>().Select(k => new Func<PlanFile, int, Checked<PlanFile>>((f, i) => OutlineEdit.SetKind(f, i, k))),
        Gen.Double[0.5, 6].Select(r => new Func<PlanFile, int, Checked<PlanFile>>((f, i) => OutlineEdit.RoundCorner(f, i, Length.OfMm(r)))));

    [Fact]
    public void Only_the_segments_meant_change()
    {
        var made = 0;
        Gen.Select(PathText, Gen.Int[0, 100], Change).Sample(
            (text, which, change) =>
            {
                var read = PlanReader.Read($"tangwright = 1 # a\nname = \"x\"\nunits = \"mm\"\n[stock]\nsteel = \"80CrV2\"\nthickness = 4\n[outline] # b\npath = \"{text}\" # c\n", "x");
                if (!read.IsGood) return true;
                var (file, before) = (read.Value, read.Value.Plan.Outline.Segments);
                var i = which % before.Length;
                var changed = change(file, i);
                if (!changed.IsGood) return true;
                Interlocked.Increment(ref made);
                var (after, n) = (changed.Value.Plan.Outline, before.Length);
                for (var k = 0; k < n; k++)
                {
                    if (k == i || k == (i + n - 1) % n) continue;
                    for (var t = 0.0; t <= 1; t += 0.25)
                    {
                        if (Nearest.Distance(after, before[k].At(t)) > 1e-5) return false;
                    }
                }

                // nothing new comes from nowhere: two rests and what is new between them, great arcs in three parts
                var strange = after.Segments.Count(s => before.All(b => b.Start.To(s.Start) > 1e-5 || b.End.To(s.End) > 1e-5 || b.At(0.4).To(s.At(0.4)) > 1e-5));
                return strange <= 7 && Frame(file.Text) == Frame(changed.Value.Text);
            },
            iter: 3000,
            seed: "0000000000000");
        Assert.True(made > 500, $"only {made} were made");
    }

    [Fact]
    public void A_mirrored_text_is_the_mirrored_path() => Gen.Select(PathText, Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[0.4, 3], Gen.Int[0, 3]).Sample(
        (text, dx, dy, k, signs) =>
        {
            if (PathData.Read(text, 1) is not { Fault: null, Paths: [var path] }) return true;
            var map = new Transform((signs & 1) == 0 ? k : -k, 0, 0, (signs & 2) == 0 ? k : -k, dx, dy);
            var mapped = PathData.Read(PathDataMap.Of(text, 1, map)!, 1);
            return mapped.Paths is [var other] && path.Segments.Length == other.Segments.Length
                && path.Segments.Zip(other.Segments).All(s => Enumerable.Range(0, 5).All(t => map.Map(s.First.At(t / 4.0)).To(s.Second.At(t / 4.0)) < 1e-5));
        },
        iter: 1000,
        seed: "0000000000000");

    private static string Written(int[] kinds, int[] numbers, bool compact, bool closed)
    {
        var (s, at, last) = (new StringBuilder(), 0, ' ');
        Put('M', 2);
        foreach (var kind in kinds)
        {
            var letter = "LlHhVvCcSsQqTtAaLl"[kind];
            if (char.ToUpperInvariant(letter) != 'A')
            {
                Put(letter, char.ToUpperInvariant(letter) switch { 'H' or 'V' => 1, 'L' or 'T' => 2, 'C' => 6, _ => 4 });
                continue;
            }

            Letter(letter);
            var turns = Math.Abs(Next());
            s.Append(CultureInfo.InvariantCulture, $"{turns + 8} {turns + 8} 0 {turns % 2}{(compact ? "" : " ")}{turns / 2 % 2}");
            Numbers(2);
        }

        return s.Append(closed ? compact ? "z" : " Z" : "").ToString();

        int Next() => numbers[at++ % numbers.Length];

        void Letter(char letter)
        {
            // letters may be left out where the one before still holds; after M comes L
            if (letter != last || letter is 'M') s.Append(compact ? "" : " ").Append(letter);
            else s.Append(' ');
            last = letter == 'M' ? 'L' : letter;
        }

        void Put(char letter, int count)
        {
            Letter(letter);
            Numbers(count);
        }

        void Numbers(int count)
        {
            for (var i = 0; i < count; i++)
            {
                var n = (Next() + (at * 0.25)).ToString(CultureInfo.InvariantCulture);
                s.Append(compact && n[0] == '-' ? "" : " ").Append(n);
            }
        }
    }

    private static string Frame(string text) => text[..text.IndexOf("path", StringComparison.Ordinal)] + text[text.IndexOf("# c", StringComparison.Ordinal)..];
}
