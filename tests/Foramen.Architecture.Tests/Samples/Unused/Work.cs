namespace Foramen.Architecture.Tests.Samples.Unused;

internal static class Work
{
    public static IEnumerable<int> Steps()
    {
        yield return Inner();
    }

    public static int Twice(int value) => 2 * value;

    public static async Task WaitAsync()
    {
        await Task.Yield();
        AfterWaiting();
    }

    public static void Idle()
    {
        // Nobody asks for it.
    }

    private static void AfterWaiting() => _ = new Func<int>(() => Inner())();

    private static int Inner() => 1;
}
