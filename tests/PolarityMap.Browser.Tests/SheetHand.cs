using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>Finds places on the sheets of a page in window coordinates, scrolled to, as a hand would; and reads what is lit.</summary>
internal static class SheetHand
{
    // All spots of the page with their places in the window.
    private const string Spots = """
        const data = JSON.parse(document.getElementById('diagram-data').textContent);
        const name = (port, place) => data.ports[port].face === 'duplex' ? (place === 1 ? ':A' : ':B') : data.ports[port].face === 'simplex' || place === 0 ? '' : ':' + place;
        const spotsOf = sheet => {
          const svg = document.getElementById(sheet.id).querySelector('svg');
          const box = svg.getBoundingClientRect(), scale = box.width / svg.viewBox.baseVal.width, spots = [];
          for (let i = 0; i < sheet.spots.length; i += 6) {
            const [x, y, w, h, port, place] = sheet.spots.slice(i, i + 6);
            spots.push({ left: box.left + x * scale, top: box.top + y * scale, right: box.left + (x + w) * scale, bottom: box.top + (y + h) * scale, place, name: data.ports[port].name + (place ? name(port, place) : '') });
          }
          return spots;
        };
        const holds = (spot, x, y, more) => x > spot.left - more && x < spot.right + more && y > spot.top - more && y < spot.bottom + more;
        """;

    /// <summary>A point of a strand that no cell and no port's name covers.</summary>
    public static Task<float[]> OnStrand(this IPage page, int number) => page.EvaluateAsync<float[]>("number => {" + Spots + """
        for (const sheet of data.sheets) {
          const group = document.getElementById(`${sheet.svg}strand-${number}`);
          if (!group) continue;
          for (const path of group.querySelectorAll('path')) {
            for (let i = 1; i < 400; i++) {
              const at = path.getPointAtLength(path.getTotalLength() * i / 400);
              const view = group.closest('.view'), svg = group.ownerSVGElement;
              const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
              view.closest('.sheet').scrollIntoView();
              view.scrollTo(at.x * scale - view.clientWidth / 2, at.y * scale - view.clientHeight / 3);
              const point = at.matrixTransform(path.getScreenCTM());
              if (group.contains(document.elementFromPoint(point.x, point.y)) && !spotsOf(sheet).some(s => holds(s, point.x, point.y, 4)))
                return [point.x, point.y];
            }
          }
        }
        throw new Error('strand ' + number + ' cannot be pointed at');
        }
        """, number);

    /// <summary>The middle of a position's cell, such as of <c>SW-L/1:A</c>.</summary>
    public static Task<float[]> OnPosition(this IPage page, string address) => page.EvaluateAsync<float[]>("wanted => {" + Spots + """
        for (const sheet of data.sheets) {
          let spot = spotsOf(sheet).find(s => s.place && s.name === wanted);
          if (!spot) continue;
          const view = document.getElementById(sheet.id).querySelector('.view');
          view.closest('.sheet').scrollIntoView();
          const box = view.getBoundingClientRect();
          spot = spotsOf(sheet).find(s => s.place && s.name === wanted);
          view.scrollBy(spot.left - box.left - view.clientWidth / 2, spot.top - box.top - view.clientHeight / 3);
          spot = spotsOf(sheet).find(s => s.place && s.name === wanted);
          return [(spot.left + spot.right) / 2, (spot.top + spot.bottom) / 2];
        }
        throw new Error(wanted + ' is not drawn');
        }
        """, address);

    /// <summary>A point of a port's name beside its cells.</summary>
    public static Task<float[]> OnPort(this IPage page, string address) => page.EvaluateAsync<float[]>("wanted => {" + Spots + """
        for (const sheet of data.sheets) {
          if (!spotsOf(sheet).some(s => !s.place && s.name === wanted)) continue;
          const view = document.getElementById(sheet.id).querySelector('.view');
          view.closest('.sheet').scrollIntoView();
          const find = () => spotsOf(sheet).find(s => !s.place && s.name === wanted);
          const box = view.getBoundingClientRect();
          view.scrollBy(find().left - box.left - view.clientWidth / 2, find().top - box.top - view.clientHeight / 3);
          const port = find(), cells = spotsOf(sheet).filter(s => s.place);
          for (let x = port.left + 1; x < port.right; x++) {
            const y = (port.top + port.bottom) / 2;
            if (!cells.some(c => holds(c, x, y, 4))) return [x, y];
          }
        }
        throw new Error(wanted + ' has no name on a sheet');
        }
        """, address);

    /// <summary>The numbers of the strands that are drawn lit, told by their lines alone; empty when none is.</summary>
    public static async Task<string> Lit(this IPage page) => await page.EvaluateAsync<string>("""
        () => {
          const numbers = new Set();
          for (const layer of document.querySelectorAll('.lit-strands')) {
            const lines = new Set([...layer.querySelectorAll('path[stroke]')].map(p => p.getAttribute('d')));
            for (const group of layer.closest('svg').querySelectorAll('[id*="strand-"][role="graphics-symbol"]')) {
              if ([...group.querySelectorAll('path')].every(p => lines.has(p.getAttribute('d'))))
                numbers.add(Number(/strand-(\d+)/.exec(group.id)[1]));
            }
          }
          return [...numbers].sort((a, b) => a - b).join(' ');
        }
        """);

    /// <summary>Waits until these strands and no others are lit.</summary>
    public static async Task WaitLit(this IPage page, string numbers)
    {
        string lit = "";
        for (int i = 0; i < 60; i++)
        {
            lit = await page.Lit();
            if (lit == numbers)
                return;
            await Task.Delay(50);
        }

        Assert.Equal(numbers, lit);
    }

    public static Task Hover(this IPage page, float[] at) => page.Mouse.MoveAsync(at[0], at[1]);

    public static Task Click(this IPage page, float[] at) => page.Mouse.ClickAsync(at[0], at[1]);

    public static Task Tap(this IPage page, float[] at) => page.Touchscreen.TapAsync(at[0], at[1]);
}
