using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>A test in the browser; skipped, with the reason, where there is none.</summary>
[Collection(BrowserTests.Name)]
public abstract class BrowserTest : IAsyncLifetime
{
    private readonly List<IPage> _pages = [];
    private readonly List<string> _complaints = [];

    protected BrowserTest(Chromium chromium)
    {
        Skip.If(Tools.NoBrowser is not null, Tools.NoBrowser);
        Chromium = chromium;
    }

    protected Chromium Chromium { get; }

    public Task InitializeAsync() => Task.CompletedTask;

    /// <summary>No page of any test asked for anything from outside, and no script of it failed.</summary>
    public async Task DisposeAsync()
    {
        foreach (IPage page in _pages)
            await page.Context.DisposeAsync();
        Assert.Empty(Chromium.AskedBeyondFiles);
        Assert.Empty(_complaints);
    }

    /// <inheritdoc cref="Chromium.Open"/>
    protected async Task<IPage> Open(string path, string fragment = "", int width = 1440, int height = 900, Action<BrowserNewContextOptions>? options = null)
    {
        IPage page = await Chromium.Open(path, fragment, width, height, options);
        page.PageError += (_, error) => _complaints.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
                _complaints.Add(message.Text);
        };
        _pages.Add(page);
        return page;
    }

    /// <summary>What is said of what is lit.</summary>
    protected static async Task<string> Words(IPage page) => (await page.Locator("#diagram-words").InnerTextAsync()).Trim();

    /// <summary>Presses Tab until something has the focus that is asked for.</summary>
    protected static async Task TabTo(IPage page, string isThere)
    {
        for (int i = 0; i < 80; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>($"() => Boolean({isThere})"))
                return;
        }

        Assert.Fail($"Tab does not lead to where {isThere}.");
    }
}
