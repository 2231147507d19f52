using System.Text.RegularExpressions;

namespace Tangwright.Tests.Rules;

/// <summary>What may stand in the project's files.</summary>
public partial class WhatIsCommitted
{
    private static readonly string[] TextEndings = [".cs", ".md", ".toml", ".csproj", ".props", ".json", ".txt", ".py", ".cpp", ".cmd", ".slnx"];

    [Fact]
    public void No_source_file_is_two_rooms_in_one()
    {
        var long_ = from f in SourceFiles()
                    let n = System.IO.File.ReadLines(f).Count()
                    where n > 500
                    select $"{System.IO.Path.GetFileName(f)}: {n} lines";
        Assert.Empty(long_);
    }

    [Fact]
    public void No_path_of_one_machine_stands_anywhere()
    {
        var found = from f in TextFiles()
                    from line in System.IO.File.ReadLines(f)
                    where MachinePath().IsMatch(line)
                    select $"{System.IO.Path.GetFileName(f)}: {line.Trim()}";
        Assert.Empty(found);
    }

    [Fact]
    public void No_word_is_used_that_says_nothing_of_the_trade()
    {
        var vague = from f in SourceFiles()
                    let name = System.IO.Path.GetFileNameWithoutExtension(f)
                    where VagueName().IsMatch(name)
                    select name;
        Assert.Empty(vague);
    }

    private static IEnumerable<string> SourceFiles() => TextFiles().Where(f => f.EndsWith(".cs", StringComparison.Ordinal));

    private static IEnumerable<string> TextFiles()
        => System.IO.Directory.EnumerateFiles(Repository.Root, "*", System.IO.SearchOption.AllDirectories)
            .Where(f => Array.Exists(TextEndings, e => f.EndsWith(e, StringComparison.Ordinal)))
            .Where(f => !Skipped().IsMatch(f[Repository.Root.Length..]))
            .Order(StringComparer.Ordinal);

    [GeneratedRegex(@"[/\\](bin|obj|artifacts|\.git|BenchmarkDotNet\.Artifacts|[^/\\]*-packet)[/\\]|packages\.lock\.json$")]
    private static partial Regex Skipped();

    [GeneratedRegex(@"(^|[^\w.])/(work|root|tmp|home)/\w")]
    private static partial Regex MachinePath();

    [GeneratedRegex("(Manager|Helper|Service|Util|Utils|Processor|Info|Base|Common)$")]
    private static partial Regex VagueName();
}
