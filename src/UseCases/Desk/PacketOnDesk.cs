using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A file of a packet as it lies in its folder.</summary>
/// <param name="Name">Its name.</param>
/// <param name="For">What it is for.</param>
/// <param name="Written">When it was written.</param>
public sealed record PacketFile(string Name, string For, DateTime Written);

/// <summary>The packet folder beside an open plan: what lies in it, and the files themselves. Nothing but the files a packet is made of is ever given out.</summary>
public static class PacketOnDesk
{
    private static readonly ImmutableArray<(string Name, string For)> Known =
    [
        ("packet.pdf", "all sheets"),
        ("template.pdf", "the template alone"),
        ("holes.csv", "the hole table, for a spreadsheet"),
        ("readout.csv", "the readout list, stop by stop"),
        ("layout.csv", "lines and centres to lay out"),
        ("outline.svg", "outline and holes"),
        ("outline.dxf", "outline and holes, for a machine"),
        ("figures.json", "every number"),
    ];

    /// <summary>The files a packet of a plan can be made of.</summary>
    private static ImmutableArray<(string Name, string For)> KnownOf(PlanOnDesk desk) => Known.AddRange(Enum.GetValues<ProgramWork>().Select(w => (MakeProgram.FileName(desk.Stem, new(w, null)), "program for the mill")));

    /// <summary>The folder's name.</summary>
    public static string FolderName(PlanOnDesk desk) => System.IO.Path.GetFileName(MakePacket.PacketFolder(desk.Path));

    /// <summary>What lies there; empty when no packet was written.</summary>
    public static ImmutableArray<PacketFile> Files(PlanOnDesk desk, DeskFolder folder)
        => [.. KnownOf(desk).Select(k => Find(desk, folder, k.Name) is { } f ? new PacketFile(k.Name, k.For, f.LastWriteTime) : null).OfType<PacketFile>()];

    /// <summary>The bytes of a file of the packet.</summary>
    public static Checked<byte[]> Open(PlanOnDesk desk, DeskFolder folder, string name)
    {
        try
        {
            if (Find(desk, folder, name) is { } f) return Checked<byte[]>.Good(System.IO.File.ReadAllBytes(f.FullName));
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            // as good as not there
        }

        return Checked<byte[]>.Bad(Fault.OfFile(name, "is no file of this plan's packet", "write the packet and choose from its files"));
    }

    private static System.IO.FileInfo? Find(PlanOnDesk desk, DeskFolder folder, string name)
    {
        if (!KnownOf(desk).Any(k => k.Name == name) || !folder.HoldsPacketOf(desk)) return null;
        var file = new System.IO.FileInfo(System.IO.Path.Combine(MakePacket.PacketFolder(desk.Path), name));
        return file.Exists && file.LinkTarget is null ? file : null;
    }
}
