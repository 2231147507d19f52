namespace Tangwright.Tests; public class Smoke { [Fact] public void Runs() => Assert.True(System.IO.Directory.Exists("/")); }
