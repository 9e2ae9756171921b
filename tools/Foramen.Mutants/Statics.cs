using System.Reflection;
using System.Runtime.CompilerServices;

namespace Foramen.Mutants;

/// <summary>What an assembly makes once and keeps: static fields, and what is put off until it is first asked for.</summary>
internal static class Statics
{
    /// <summary>Makes all of it now, so that no mutant that is on later can get into it.</summary>
    public static void Make(Assembly assembly)
    {
        foreach (var type in assembly.GetTypes().Where(type => !type.ContainsGenericParameters))
        {
            RuntimeHelpers.RunClassConstructor(type.TypeHandle);
            foreach (var lazy in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly).Where(IsLazy))
            {
                lazy.FieldType.GetProperty(nameof(Lazy<>.Value))!.GetValue(lazy.GetValue(null));
            }
        }
    }

    private static bool IsLazy(FieldInfo field) => field.FieldType is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Lazy<>);
}
