namespace Foramen.Architecture.Tests.Samples.Unused;

internal sealed record Answer(int Stored)
{
    public int Asked => Stored + 1;

    public int Unasked => Stored + 2;
}
