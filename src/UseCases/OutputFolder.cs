using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A file to write.</summary>
/// <param name="Path">Where.</param>
/// <param name="Bytes">What.</param>
public sealed record OutputFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>Writes files whole or not at all: each to a temporary name first, then all are moved into place. Nothing existing is replaced unless asked.</summary>
public static class OutputFolder
{
    /// <summary>Writes the files.</summary>
    /// <param name="files">The files.</param>
    /// <param name="overwrite">Whether existing files may be replaced.</param>
    /// <returns>The faults; none when all are in place.</returns>
    public static ImmutableArray<Fault> Write(IReadOnlyList<OutputFile> files, bool overwrite)
    {
        if (!overwrite)
        {
            // a file that already says the same is as good as written
            files = [.. files.Where(f => !SaysTheSame(f))];
            ImmutableArray<Fault> taken = [.. files.Where(f => System.IO.File.Exists(f.Path)).Select(f => Fault.OfFile(f.Path, "already exists and was left alone", "add --overwrite to replace it, or --out for another place"))];
            if (taken.Length > 0) return taken;
        }

        if (files.Select(f => System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(f.Path))!).FirstOrDefault(System.IO.File.Exists) is { } notFolder)
            return [Fault.OfFile(notFolder, "is a file, so nothing can be put into it", "name a folder")];

        var waiting = new List<(string Temporary, string Final)>();
        var current = "";
        try
        {
            foreach (var f in files)
            {
                current = f.Path;
                var folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(f.Path))!;
                System.IO.Directory.CreateDirectory(folder);
                var temporary = System.IO.Path.Combine(folder, $".{System.IO.Path.GetFileName(f.Path)}.{Environment.ProcessId}.part");
                waiting.Add((temporary, f.Path));
                using var s = new System.IO.FileStream(temporary, System.IO.FileMode.Create, System.IO.FileAccess.Write);
                s.Write(f.Bytes.Span);

                // who may read and write it stays as it was
                if (!OperatingSystem.IsWindows() && System.IO.File.Exists(f.Path)) System.IO.File.SetUnixFileMode(s.SafeFileHandle, System.IO.File.GetUnixFileMode(f.Path));
            }

            foreach (var (temporary, final) in waiting)
            {
                current = final;
                System.IO.File.Move(temporary, final, overwrite);
            }

            return [];
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            foreach (var (temporary, _) in waiting)
            {
                try
                {
                    System.IO.File.Delete(temporary);
                }
                catch (Exception again) when (again is System.IO.IOException or UnauthorizedAccessException)
                {
                    // the first reason is the one worth telling
                }
            }

            return [Fault.OfFile(current, "cannot be written: " + e.Message, "check the folder, the room on the disk and that you may write there")];
        }
    }

    private static bool SaysTheSame(OutputFile file)
    {
        try
        {
            var there = new System.IO.FileInfo(file.Path);
            return there.Exists && there.Length == file.Bytes.Length && System.IO.File.ReadAllBytes(file.Path).AsSpan().SequenceEqual(file.Bytes.Span);
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
