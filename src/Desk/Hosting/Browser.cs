using System.ComponentModel;
using System.Diagnostics;

namespace Tangwright.Desk;

/// <summary>Opens a page in the browser the computer prefers; the address has been printed already, so a computer without one is no trouble.</summary>
internal static class Browser
{
    /// <summary>Opens it.</summary>
    public static void Open(string address)
    {
        try
        {
            using var p = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            Console.WriteLine("no browser could be opened from here: type the address in");
        }
    }
}
