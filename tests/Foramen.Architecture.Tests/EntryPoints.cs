using Mono.Cecil;

namespace Foramen.Architecture.Tests;

/// <summary>What no code of ours calls and is called all the same: by the browser, the router, the database's tools, the web server's pipeline.</summary>
internal static class EntryPoints
{
    /// <summary>A page with an address; a step of the database's history, and the maker its tools ask for.</summary>
    public static bool IsEntered(TypeDefinition type)
        => Has(type, "Microsoft.AspNetCore.Components.RouteAttribute")
            || Has(type, "Microsoft.EntityFrameworkCore.Migrations.MigrationAttribute")
            || Has(type, "Microsoft.EntityFrameworkCore.Infrastructure.DbContextAttribute")
            || type.Interfaces.Any(each => each.InterfaceType.FullName.StartsWith("Microsoft.EntityFrameworkCore.Design.IDesignTimeDbContextFactory", StringComparison.Ordinal));

    /// <summary>What the browser calls, and a stage of the server's pipeline, which is found by its name.</summary>
    public static bool IsEntered(MethodDefinition method)
        => Has(method, "Microsoft.JSInterop.JSInvokableAttribute")
            || method.Name == "InvokeAsync" && method.Parameters is [{ ParameterType.FullName: "Microsoft.AspNetCore.Http.HttpContext" }, ..];

    private static bool Has(ICustomAttributeProvider provider, string attribute) => provider.CustomAttributes.Any(each => each.AttributeType.FullName == attribute);
}
