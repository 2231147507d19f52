using System.Net;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>A scanned drawing beneath a plan: what is taken, where it lies, and that it stays in the folder.</summary>
public sealed class BackgroundTests(DeskOnScratch desk) : IClassFixture<DeskOnScratch>
{
    /// <summary>A PNG of 8 by 4 pixels, grey, written with zlib as the PNG specification lays it out.</summary>
    internal static byte[] Png => Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAgAAAAECAAAAACWpiEsAAAADklEQVR4nGNogAIG3AwAIDMQAcP1CnsAAAAASUVORK5CYII=");

    [Fact]
    public void Two_places_given_their_distance_scale_it_about_the_first()
    {
        var place = new BackgroundPlace(new(10, 20), 0.5, 0, 0.35, true);
        var scaled = place.Scaled(new(20, 20), new(50, 60), Length.OfMm(100)).Value;

        // 50 mm apart before, 100 after: twice as large, and the first place stays
        Assert.Equal((0.0, 20.0, 1.0), (scaled.Corner.X, scaled.Corner.Y, scaled.PixelMm));
        Assert.False(place.Scaled(new(1, 1), new(1, 1), Length.OfMm(5)).IsGood);
        var read = BackgroundPlace.Read(scaled.Turned(90, new Point(0, 0)).Value.Text(), "x").Value;
        Assert.Equal(-20, read.Corner.X, 5);
        Assert.Equal(0, read.Corner.Y, 5);
        Assert.Equal(90, read.TurnDegrees, 5);
    }

    [Theory]
    [InlineData("")]
    [InlineData("GIF89a")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>")]
    public async Task Other_than_png_and_jpeg_is_refused(string text)
    {
        var stem = desk.PutExample("paring-knife");
        using var answer = await Send(stem, System.Text.Encoding.ASCII.GetBytes(text));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(System.IO.Directory.GetFiles(desk.Scratch.Folder, stem + ".background*"));
    }

    [Fact]
    public async Task A_picture_comes_back_as_it_was_sent_and_only_as_a_picture()
    {
        var stem = desk.PutExample("paring-knife");
        using var sent = await Send(stem, Png);
        Assert.Equal(HttpStatusCode.NoContent, sent.StatusCode);
        using var back = await desk.Running.Client.GetAsync($"/plan/{stem}/background");
        Assert.Equal(Png, await back.Content.ReadAsByteArrayAsync());
        Assert.Equal("image/png", back.Content.Headers.ContentType?.MediaType);
        Assert.Equal("nosniff", back.Headers.GetValues("X-Content-Type-Options").Single());

        // what somebody else puts there under that name is not given when it is no picture
        System.IO.File.WriteAllText(desk.Scratch.Path(stem + ".background.png"), "not a picture");
        using var other = await desk.Running.Client.GetAsync($"/plan/{stem}/background");
        Assert.Equal(HttpStatusCode.NotFound, other.StatusCode);
    }

    [Fact]
    public async Task Too_large_a_name_that_leads_elsewhere_and_a_link_are_refused()
    {
        var stem = desk.PutExample("paring-knife");
        using var large = await Send(stem, [.. Png, .. new byte[Background.LargestBytes]]);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, large.StatusCode);
        using var elsewhere = await Send("..%2F..%2Fother", Png);
        Assert.Equal(HttpStatusCode.NotFound, elsewhere.StatusCode);
        using var outside = new Scratch();
        System.IO.File.WriteAllBytes(outside.Path("private.png"), Png);
        System.IO.File.CreateSymbolicLink(desk.Scratch.Path(stem + ".background.png"), outside.Path("private.png"));
        using var linked = await desk.Running.Client.GetAsync($"/plan/{stem}/background");
        Assert.Equal(HttpStatusCode.NotFound, linked.StatusCode);
        using var over = await Send(stem, Png);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, over.StatusCode);
    }

    [Fact]
    public void Sizes_are_read_from_the_first_bytes()
    {
        Assert.Equal(new PictureSize(true, 8, 4), PictureSize.Of(Png));

        // start, a comment of 2 bytes, a frame header of 480 by 640 (ITU-T T.81, B.2.2)
        Assert.Equal(new PictureSize(false, 640, 480), PictureSize.Of([0xFF, 0xD8, 0xFF, 0xFE, 0, 4, 1, 2, 0xFF, 0xC0, 0, 17, 8, 480 >> 8, 480 & 255, 640 >> 8, 640 & 255, 3, 0, 0]));
        Assert.Null(PictureSize.Of([0xFF, 0xD8, 0xFF, 0xFE, 0, 0, 0, 0, 0, 0, 0, 0]));
        Assert.Null(PictureSize.Of(Png.AsSpan(0, 20)));
    }

    private Task<HttpResponseMessage> Send(string stem, byte[] bytes) => desk.Running.Client.PostAsync($"/plan/{stem}/background", new ByteArrayContent(bytes));
}
