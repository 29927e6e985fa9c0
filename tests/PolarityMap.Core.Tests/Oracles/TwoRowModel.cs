namespace PolarityMap.Core.Tests.Oracles;

/// <summary>
/// Trunk maps and transitions of two rows of any width, by row and column (trade facts 2.2 and 5). For rows of twelve they are
/// the typed tables; wider rows follow the same words.
/// </summary>
public static class TwoRowModel
{
    /// <summary>A trunk by its key, near to far.</summary>
    public static Dictionary<int, int> Cable(string key, int columns)
    {
        var map = new Dictionary<int, int>();
        for (var row = 1; row <= 2; row++)
        {
            for (var column = 1; column <= columns; column++)
            {
                var neighbour = column % 2 == 1 ? column + 1 : column - 1;
                map[At(row, column, columns)] = key switch
                {
                    "straight-by-number" => At(row, column, columns),
                    "rows-exchanged" => At(3 - row, column, columns),
                    "reversed-in-row" => At(row, columns + 1 - column, columns),
                    "fully-reversed" => At(3 - row, columns + 1 - column, columns),
                    "pair-flipped" => At(row, neighbour, columns),
                    _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no such two-row cable"),
                };
            }
        }

        return map;
    }

    /// <summary>A transition by the words of the typed tables: duplex port and position to array position. Ports count through the rows.</summary>
    public static Dictionary<(int Port, char Position), int> Transition(string words, int columns)
    {
        var map = new Dictionary<(int Port, char Position), int>();
        var half = columns / 2;
        for (var row = 1; row <= 2; row++)
        {
            for (var k = 1; k <= half; k++)
            {
                var port = ((row - 1) * half) + k;
                var (a, b) = words switch
                {
                    "straight" => (At(row, (2 * k) - 1, columns), At(row, 2 * k, columns)),
                    "straight, rows exchanged" => (At(3 - row, (2 * k) - 1, columns), At(3 - row, 2 * k, columns)),
                    "straight, ports reversed in each row" => (At(row, columns + 1 - (2 * k), columns), At(row, columns + 2 - (2 * k), columns)),
                    "straight, all ports reversed" => (At(3 - row, columns + 1 - (2 * k), columns), At(3 - row, columns + 2 - (2 * k), columns)),
                    "universal in each row" => (At(row, k, columns), At(row, columns + 1 - k, columns)),
                    "universal over both rows" => (port, (2 * columns) + 1 - port),
                    _ => throw new ArgumentOutOfRangeException(nameof(words), words, "no such two-row transition"),
                };
                map[(port, 'A')] = a;
                map[(port, 'B')] = b;
            }
        }

        return map;
    }

    /// <summary>A link between two cassettes, both adapters alike.</summary>
    public static SlowLink Link(string leftTransition, string trunk, string rightTransition, bool opposed, int columns)
    {
        var mating = SlowModel.Mating(2, columns, opposed);
        return new SlowLink(Transition(leftTransition, columns), mating, Cable(trunk, columns), mating, Transition(rightTransition, columns));
    }

    private static int At(int row, int column, int columns) => ((row - 1) * columns) + column;
}
