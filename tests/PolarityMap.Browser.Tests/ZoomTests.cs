using System.Text.Json;
using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>Zoom and pan in a sheet's own box: by buttons, keys, wheel, two fingers and drag. A sheet of A4 is 297 mm wide, 1122.5 CSS pixels.</summary>
public sealed class ZoomTests(Chromium chromium) : BrowserTest(chromium)
{
    private const double A4 = 297 * 96 / 25.4;

    [SkippableFact]
    public async Task Buttons_zoom_in_out_to_the_printed_size_and_to_the_whole_width()
    {
        IPage page = await Open(ReportPages.Duplex, width: 768);
        Assert.Equal(A4, await Width(page), 0.5);
        await page.GetByRole(AriaRole.Button, new() { Name = "Zoom in, sheet 1" }).ClickAsync();
        Assert.Equal(A4 * 1.25, await Width(page), 0.5);
        await page.GetByRole(AriaRole.Button, new() { Name = "125 %; back to 100 %, size as printed, sheet 1" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Zoom out, sheet 1" }).PressAsync("Enter");
        Assert.Equal(A4 / 1.25, await Width(page), 0.5);
        Assert.Equal("80 %", await page.TextContentAsync("output"));
        Assert.True(await page.GetByRole(AriaRole.Button, new() { Name = "80 %; back to 100 %" }).IsVisibleAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Whole width, sheet 1" }).ClickAsync();
        Assert.Equal(await page.EvaluateAsync<double>("() => document.querySelector('.view').clientWidth"), await Width(page), 1.0);
    }

    [SkippableFact]
    public async Task Keys_zoom_and_scroll_the_sheet_that_has_the_focus()
    {
        IPage page = await Open(ReportPages.Duplex, width: 768);
        await TabTo(page, "document.activeElement.matches('.view')");
        await page.Keyboard.PressAsync("+");
        Assert.Equal(A4 * 1.25, await Width(page), 0.5);
        double before = await Left(page);
        await page.Keyboard.PressAsync("ArrowRight");
        await page.WaitForFunctionAsync($"() => document.querySelector('.view').scrollLeft > {Script(before)}");
        await page.Keyboard.PressAsync("0");
        await page.Keyboard.PressAsync("-");
        Assert.Equal(A4 / 1.25, await Width(page), 0.5);
    }

    [SkippableFact]
    public async Task The_wheel_with_control_zooms_about_the_pointer_and_without_it_scrolls()
    {
        IPage page = await Open(ReportPages.Duplex, width: 768);
        float[] at = await page.OnPosition("TRUNK/near:5");
        await page.Mouse.MoveAsync(at[0], at[1]);
        await page.Keyboard.DownAsync("Control");
        await page.Mouse.WheelAsync(0, -200);
        await page.WaitForFunctionAsync("() => document.querySelector('svg').getBoundingClientRect().width > 1500");
        await page.Keyboard.UpAsync("Control");

        // What was under the pointer still is.
        await page.Mouse.MoveAsync(at[0] + 1, at[1]);
        await page.WaitLit("7");
        double zoomed = await Width(page);
        await page.Mouse.WheelAsync(40, 0);
        await page.WaitForTimeoutAsync(100);
        Assert.Equal(zoomed, await Width(page), 0.5);
    }

    [SkippableFact]
    public async Task Two_fingers_zoom()
    {
        IPage page = await Open(ReportPages.Duplex, width: 360, height: 740, options: o => (o.HasTouch, o.IsMobile) = (true, true));
        float[] at = await page.OnPosition("K-L/3:A");
        ICDPSession touch = await page.Context.NewCDPSessionAsync(page);
        await Touch(touch, "touchStart", at[0] - 30, at[0] + 30, at[1]);
        for (int spread = 30; spread <= 60; spread += 10)
            await Touch(touch, "touchMove", at[0] - spread, at[0] + spread, at[1]);
        await touch.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        Assert.Equal(A4 * 2, await Width(page), 20.0);
        Assert.Equal(1, await page.EvaluateAsync<double>("() => visualViewport.scale"));
    }

    [SkippableFact]
    public async Task A_drag_pans_and_lights_nothing()
    {
        IPage page = await Open(ReportPages.Duplex, width: 768);
        float[] at = await page.OnStrand(5);
        double before = await Left(page);
        await page.Mouse.MoveAsync(at[0], at[1]);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(at[0] - 60, at[1] - 10, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        Assert.Equal(before + 60, await Left(page), 2.0);
        await page.Mouse.MoveAsync(5, 5);
        await page.WaitLit("");
        Assert.Equal("", await page.EvaluateAsync<string>("() => location.hash"));
    }

    private static Task<double> Width(IPage page) => page.EvaluateAsync<double>("() => document.querySelector('svg').getBoundingClientRect().width");

    private static Task<double> Left(IPage page) => page.EvaluateAsync<double>("() => document.querySelector('.view').scrollLeft");

    private static string Script(double number) => JsonSerializer.Serialize(number);

    private static Task Touch(ICDPSession session, string type, float x1, float x2, float y) => session.SendAsync("Input.dispatchTouchEvent", new()
    {
        ["type"] = type,
        ["touchPoints"] = new[] { new Dictionary<string, object> { ["x"] = x1, ["y"] = y, ["id"] = 1 }, new Dictionary<string, object> { ["x"] = x2, ["y"] = y, ["id"] = 2 } },
    });
}
