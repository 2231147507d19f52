namespace Tangwright.Desk;

/// <summary>Lets only the desk's own pages in: the host must be this computer by name, and an origin, when told, must be the desk itself. Without it any page open in the same browser could read and change plans.</summary>
internal static class OwnPagesOnly
{
    private const string Rules = "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; object-src 'self'; frame-ancestors 'self'; base-uri 'self'; form-action 'self'";

    /// <summary>Whether a request comes from the desk's own pages.</summary>
    /// <param name="scheme">http.</param>
    /// <param name="host">Host asked for.</param>
    /// <param name="port">Port asked for.</param>
    /// <param name="origins">Origins told; usually none or one.</param>
    public static bool Holds(string scheme, string host, int? port, IReadOnlyList<string?> origins)
    {
        if (host is not ("127.0.0.1" or "localhost")) return false;
        var own = port is { } p && p != 80 ? $"{scheme}://{host}:{p}" : $"{scheme}://{host}";
        return origins.All(o => string.Equals(o, own, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Puts the guard in the way.</summary>
    public static void Use(WebApplication app) => app.Use(async (context, next) =>
    {
        var r = context.Request;
        if (!Holds(r.Scheme, r.Host.Host, r.Host.Port, r.Headers.Origin))
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            await context.Response.WriteAsync("This address is for the desk's own pages.");
            return;
        }

        context.Response.Headers.ContentSecurityPolicy = Rules;
        context.Response.Headers.XContentTypeOptions = "nosniff";
        await next(context);
    });
}
