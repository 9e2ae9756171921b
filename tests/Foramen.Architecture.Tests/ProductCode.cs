using System.Runtime.CompilerServices;
using Mono.Cecil;

namespace Foramen.Architecture.Tests;

/// <summary>Compiled projects read together, so that a reference in one finds what it means in another.</summary>
internal sealed class ProductCode : IDisposable
{
    private readonly Dictionary<string, AssemblyDefinition> assemblies;
    private readonly DefaultAssemblyResolver resolver = new();

    /// <param name="folder">Where the compiled projects lie.</param>
    /// <param name="projects">Their files, without ending.</param>
    public ProductCode(string folder, IEnumerable<string> projects)
    {
        resolver.AddSearchDirectory(folder);
        assemblies = projects
            .Select(project => AssemblyName(Path.Combine(folder, $"{project}.dll")))
            .ToDictionary(name => name.Name, resolver.Resolve, StringComparer.Ordinal);
    }

    public IReadOnlyCollection<AssemblyDefinition> Assemblies => assemblies.Values;

    public IEnumerable<TypeDefinition> Types => Assemblies.SelectMany(assembly => assembly.MainModule.GetTypes());

    /// <summary>The method meant, if it is one of the projects'.</summary>
    public MethodDefinition? Find(MethodReference reference) => IsOurs(reference.DeclaringType) ? reference.Resolve() : null;

    /// <summary>The type meant, or the type of its elements, if it is one of the projects'.</summary>
    public TypeDefinition? Find(TypeReference reference) => IsOurs(reference) ? reference.Resolve() : null;

    /// <summary>
    /// Whether a method stands for one that is called elsewhere: it overrides, or fulfils an interface, of ours that is <paramref name="called"/>, or of somebody else's.
    /// </summary>
    public bool Answers(MethodDefinition method, IReadOnlySet<MethodDefinition> called)
    {
        var asked = Askers(method).ToList();
        var stands = asked.Count > 0 || method.HasOverrides || method.IsVirtual && (method.IsReuseSlot || method.IsFinal);
        return stands && (asked.Count == 0 || asked.Any(called.Contains));
    }

    /// <summary>Whether a method overrides or fulfils an interface: it has to be there, called or not.</summary>
    public bool IsAnswer(MethodDefinition method) => Askers(method).Any() || method.HasOverrides || method.IsVirtual && (method.IsReuseSlot || method.IsFinal);

    /// <summary>Equality, printing and taking apart, which the compiler writes for each record.</summary>
    public static bool IsWrittenForRecord(MethodDefinition method)
        => IsMadeByCompiler(method) && method.DeclaringType.Methods.Any(each => each.Name == "PrintMembers") && !method.IsGetter && !method.IsSetter && !method.IsConstructor;

    public static bool IsMadeByCompiler(ICustomAttributeProvider member)
        => member.CustomAttributes.Any(each => each.AttributeType.FullName == typeof(CompilerGeneratedAttribute).FullName);

    public void Dispose() => resolver.Dispose();

    // Parameters of generic types differ in their letters, so only their number is compared: at worst a method is taken to be reached.
    private IEnumerable<MethodDefinition> Askers(MethodDefinition method)
    {
        var name = method.Name[(method.Name.LastIndexOf('.') + 1)..];
        return method.IsConstructor || method.IsStatic && !method.DeclaringType.HasInterfaces
            ? []
            : Above(method.DeclaringType).SelectMany(type => type.Methods)
                .Where(each => each.IsVirtual && each.Name == name && each.Parameters.Count == method.Parameters.Count);
    }

    private IEnumerable<TypeDefinition> Above(TypeDefinition type)
        => type.Interfaces.Select(each => each.InterfaceType).Append(type.BaseType).OfType<TypeReference>()
            .Select(Find).OfType<TypeDefinition>().SelectMany(above => Above(above).Prepend(above));

    private bool IsOurs(TypeReference type)
        => type is not GenericParameter && type.GetElementType() is { } element and not GenericParameter
            && assemblies.ContainsKey(element.Scope is AssemblyNameReference other ? other.Name : element.Module.Assembly.Name.Name);

    private static AssemblyNameReference AssemblyName(string file)
    {
        using var assembly = AssemblyDefinition.ReadAssembly(file);
        return AssemblyNameReference.Parse(assembly.FullName);
    }
}
