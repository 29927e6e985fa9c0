using System.Collections.Concurrent;
using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>One browser for all tests, started when the first one asks for it. A page gets nothing but files and data.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private readonly ConcurrentBag<string> _asked = [];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>What pages asked for beyond files and data; it was refused.</summary>
    public IReadOnlyCollection<string> AskedBeyondFiles => _asked;

    public async Task InitializeAsync()
    {
        if (Tools.NoBrowser is not null)
            return;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Tools.Chromium,
            Headless = true,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
    }

    /// <summary>Opens a page in a context of its own, with motion reduced, and waits until it stands.</summary>
    /// <param name="path">The page's file.</param>
    /// <param name="fragment">The part of the address behind the file, with its #.</param>
    /// <param name="width">Width of the window in CSS pixels.</param>
    /// <param name="height">Its height.</param>
    /// <param name="options">Changes what the context can do: touch, no script, colours.</param>
    public async Task<IPage> Open(string path, string fragment = "", int width = 1440, int height = 900, Action<BrowserNewContextOptions>? options = null)
    {
        var settings = new BrowserNewContextOptions
        {
            ViewportSize = new() { Width = width, Height = height },
            ReducedMotion = ReducedMotion.Reduce,
            ScreenSize = new() { Width = width, Height = height },
        };
        options?.Invoke(settings);
        IBrowserContext context = await _browser!.NewContextAsync(settings);
        await context.RouteAsync("**/*", async route =>
        {
            if (route.Request.Url.StartsWith("file:", StringComparison.Ordinal) || route.Request.Url.StartsWith("data:", StringComparison.Ordinal))
            {
                await route.ContinueAsync();
                return;
            }

            _asked.Add(route.Request.Url);
            await route.AbortAsync();
        });
        IPage page = await context.NewPageAsync();
        page.SetDefaultTimeout(30_000);
        await page.GotoAsync(new Uri(path).AbsoluteUri + fragment, new() { Timeout = 60_000 });
        return page;
    }
}

/// <summary>Tests that share the browser run one after the other.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<Chromium>
{
    public const string Name = "browser";
}
