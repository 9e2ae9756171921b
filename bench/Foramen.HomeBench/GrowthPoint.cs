namespace Foramen.HomeBench;

/// <summary>What a journal of some size costs.</summary>
/// <param name="Entries">Its size.</param>
/// <param name="WriteSeconds">To write all of it.</param>
/// <param name="FirstPageSeconds">From the start of Home's process to the app's page and the first page of entries; the worst of three.</param>
/// <param name="ReadSeconds">To read all of it.</param>
internal sealed record GrowthPoint(int Entries, double WriteSeconds, double FirstPageSeconds, double ReadSeconds);
