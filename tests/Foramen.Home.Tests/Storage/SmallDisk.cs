using System.Diagnostics;

namespace Foramen.Home.Tests.Storage;

/// <summary>A file system of its own in memory, so small that it fills; with a ballast file that can be thrown out.</summary>
internal sealed class SmallDisk : IDisposable
{
    private SmallDisk(string path) => Path = path;

    public string Path { get; }

    private string Ballast => System.IO.Path.Combine(Path, "ballast");

    /// <summary>Mounts one; null where that is not allowed here.</summary>
    public static SmallDisk? Mount(int kilobytes, int ballastKilobytes)
    {
        var path = Directory.CreateTempSubdirectory("foramen-disk-").FullName;
        if (!Run("mount", "-t", "tmpfs", "-o", $"size={kilobytes}k", "tmpfs", path))
        {
            Directory.Delete(path);
            return null;
        }

        var disk = new SmallDisk(path);
        File.WriteAllBytes(disk.Ballast, new byte[ballastKilobytes * 1024]);
        return disk;
    }

    public void MakeRoom() => File.Delete(Ballast);

    public void Dispose()
    {
        Run("umount", Path);
        Directory.Delete(Path);
    }

    private static bool Run(string program, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
