namespace Foramen.Journal.Tests.Sync;

/// <summary>The app was killed in the middle.</summary>
internal sealed class DeviceDiedException : Exception;
