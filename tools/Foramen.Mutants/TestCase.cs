using System.Globalization;
using System.Reflection;
using Xunit;
using Xunit.Sdk;
using Xunit.v3;

namespace Foramen.Mutants;

/// <summary>One test with its arguments, called by reflection: made, begun, called, ended, as the test library does it.</summary>
internal sealed record TestCase(string Name, MethodInfo Method, object?[] Arguments)
{
    // Of base classes too, but asked for as the class that is made.
    private const BindingFlags Calls = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance;

    /// <summary>All tests of an assembly that are not left out, ordered by name, so that two processes number them alike.</summary>
    public static IReadOnlyList<TestCase> Of(Assembly tests) =>
        [.. tests.GetTypes().Where(type => type is { IsAbstract: false, IsPublic: true }).SelectMany(Methods).SelectMany(Cases).OrderBy(test => test.Name, StringComparer.Ordinal)];

    /// <returns>Whether the test passed.</returns>
    public bool Passes()
    {
        try
        {
            Call().AsTask().GetAwaiter().GetResult();
            return true;
        }
#pragma warning disable CA1031 // Any failure whatever of a test is what is asked for.
        catch (Exception)
#pragma warning restore CA1031
        {
            return false;
        }
    }

    private async ValueTask Call()
    {
        var test = Method.IsStatic ? null : Activator.CreateInstance(Method.ReflectedType!);
        try
        {
            if (test is IAsyncLifetime begins)
            {
                await begins.InitializeAsync().ConfigureAwait(false);
            }

            switch (Method.Invoke(test, BindingFlags.OptionalParamBinding, null, Arguments, null))
            {
                case Task task:
                    await task.ConfigureAwait(false);
                    break;
                case ValueTask task:
                    await task.ConfigureAwait(false);
                    break;
            }
        }
        finally
        {
            if (test is IAsyncDisposable ends)
            {
                await ends.DisposeAsync().ConfigureAwait(false);
            }
            else
            {
                (test as IDisposable)?.Dispose();
            }
        }
    }

    private static IEnumerable<MethodInfo> Methods(Type type) =>
        type.GetMethods(Calls).Where(method => method.GetCustomAttributes().OfType<IFactAttribute>().Any(fact => fact is { Skip: null, Explicit: false }));

    private static IEnumerable<TestCase> Cases(MethodInfo method)
    {
        var name = $"{method.ReflectedType!.FullName}.{method.Name}";
        if (!method.GetCustomAttributes().OfType<ITheoryAttribute>().Any())
        {
            return [new(name, method, [])];
        }

        var rows = method.GetCustomAttributes().OfType<IDataAttribute>().SelectMany(data => Rows(method, data)).ToList();
        return rows.Count > 0
            ? rows.Select((row, index) => new TestCase($"{name} {index:000}", method, Complete(method, row.GetData())))
            : throw new InvalidOperationException($"{name} has no rows that can be read here.");
    }

    private static IReadOnlyCollection<ITheoryDataRow> Rows(MethodInfo method, IDataAttribute data)
    {
        if (data is ITypeAwareDataAttribute { MemberType: null } besideTheTest)
        {
            besideTheTest.MemberType = method.ReflectedType;
        }

        return data.GetData(method, new DisposalTracker()).AsTask().GetAwaiter().GetResult();
    }

    // As the library does: left-out arguments by their defaults, numbers in the parameter's own type.
    private static object?[] Complete(MethodInfo method, object?[] arguments) =>
        [.. method.GetParameters().Select((parameter, index) => index < arguments.Length ? Fitting(arguments[index], parameter.ParameterType) : Type.Missing)];

    private static object? Fitting(object? argument, Type type) =>
        argument is IConvertible number and not Enum && type.IsPrimitive ? Convert.ChangeType(number, type, CultureInfo.InvariantCulture) : argument;
}
