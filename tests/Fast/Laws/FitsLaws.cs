using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class FitsLaws
{
    private static readonly Gen<Length> Size = Gen.Double[0.5, 50].Select(Length.OfMm);
    private static readonly Gen<int> Grade = Gen.Int[ToleranceGrade.Finest, ToleranceGrade.Coarsest];

    [Fact]
    public void A_coarser_grade_is_wider_and_a_larger_size_is_no_finer()
        => Size.Select(Size, Grade).Sample((a, b, grade) =>
        {
            var (small, large) = (Length.Min(a, b), Length.Max(a, b));
            return ToleranceGrade.Width(small, grade)!.Value <= ToleranceGrade.Width(large, grade)!.Value
                && (grade == ToleranceGrade.Coarsest || ToleranceGrade.Width(a, grade)!.Value < ToleranceGrade.Width(a, grade + 1)!.Value);
        });

    [Fact]
    public void The_limits_of_every_class_lie_as_far_apart_as_its_grade_is_wide()
        => Size.Select(Grade, OneOf("F G H JS K M N P f g h js k m n p r s")).Sample((size, grade, letters) =>
        {
            var wanted = Read(letters, grade);
            var (lower, upper) = FundamentalDeviation.Of(size, wanted)!.Value;
            return Math.Abs((upper - lower - ToleranceGrade.Width(size, grade)!.Value).Mm) < 1e-12;
        });

    [Fact]
    public void Holes_that_clear_are_pins_that_clear_mirrored()
        => Size.Select(Grade, OneOf("f g h js")).Sample((size, grade, letters) =>
        {
            var (hole, pin) = (FundamentalDeviation.Of(size, Read(letters.ToUpperInvariant(), grade))!.Value, FundamentalDeviation.Of(size, Read(letters, grade))!.Value);
            return Math.Abs((hole.Lower + pin.Upper).Mm) < 1e-12 && Math.Abs((hole.Upper + pin.Lower).Mm) < 1e-12;
        });

    [Fact]
    public void A_hole_basis_fit_and_the_shaft_basis_fit_of_the_same_letters_are_alike()
        // what Delta is for (ISO 286-1): H7/p6 and P7/h6 have the same clearances, over 3 mm
        => Gen.Double[3.01, 50].Select(OneOf("k m n p"), Gen.Int[6, 7]).Sample((mm, letter, holeGrade) =>
        {
            var size = Length.OfMm(mm);
            FitResult Fit(string hole, string pin) => FitResult.Of(FitLimits.Of(size, Read(hole, holeGrade)).Value, FitLimits.Of(size, Read(pin, holeGrade - 1)).Value);
            var (byHole, byPin) = (Fit("H", letter), Fit(letter.ToUpperInvariant(), "h"));
            return Math.Abs((byHole.LeastClearance - byPin.LeastClearance).Mm) < 1e-12 && Math.Abs((byHole.MostClearance - byPin.MostClearance).Mm) < 1e-12;
        });

    [Fact]
    public void Every_later_letter_fits_no_looser()
        => Size.Select(Gen.Int[5, 7]).Sample((size, grade) =>
        {
            var near = "f g h js k m n p r s".Split(' ').Select(l => FundamentalDeviation.Of(size, Read(l, grade))!.Value.Upper).ToArray();
            return near.Zip(near.Skip(1)).All(p => p.First <= p.Second);
        });

    [Fact]
    public void The_spread_of_a_fit_is_the_sum_of_both_widths()
        => Size.Select(Grade, Grade).Sample((size, a, b) =>
        {
            var fit = FitResult.Of(FitLimits.Of(size, Read("H", a)).Value, FitLimits.Of(size, Read("m", b)).Value);
            return Math.Abs((fit.MostClearance - fit.LeastClearance - ToleranceGrade.Width(size, a)!.Value - ToleranceGrade.Width(size, b)!.Value).Mm) < 1e-12;
        });

    [Fact]
    public void Drills_stand_on_their_side_of_the_size_and_what_is_left_to_ream_is_within_the_rule()
        => Gen.Double[1, 50].Select(Length.OfMm).Sample(size => NearestDrills.Of(size).All(s =>
        {
            var (least, most) = ReamingStock.For(size);
            return (s.Below is null || s.Below.Diameter.Mm <= size.Mm + 1e-6) && (s.Above is null || s.Above.Diameter.Mm >= size.Mm - 1e-6)
                && (s.ToReam is null || ((size - s.ToReam.Diameter).Mm >= least.Mm - 1e-6 && (size - s.ToReam.Diameter).Mm <= most.Mm + 1e-6));
        }));

    [Fact]
    public void A_drilled_hole_and_a_general_tolerance_hold_the_size_itself()
        => Gen.Double[0.5, 50].Select(Length.OfMm).Sample(size =>
            DrilledSize.Of(size) is { } band && band.Least < size && band.Most > size
            && GeneralTolerance.Of(size, 'f')!.Value <= GeneralTolerance.Of(size, 'm')!.Value && GeneralTolerance.Of(size, 'm')!.Value <= GeneralTolerance.Of(size, 'c')!.Value);

    private static Gen<string> OneOf(string letters)
    {
        var all = letters.Split(' ');
        return Gen.Int[0, all.Length - 1].Select(i => all[i]);
    }

    private static ToleranceClass Read(string letters, int grade) => (char.IsAsciiLetterUpper(letters[0]) ? ToleranceClass.Hole($"{letters}{grade}") : ToleranceClass.Pin($"{letters}{grade}")).Value;
}
