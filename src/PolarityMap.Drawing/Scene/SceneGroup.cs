namespace PolarityMap.Drawing.Scene;

/// <summary>What a group is to a reader that cannot see it (WAI-ARIA Graphics Module).</summary>
public enum GroupRole
{
    /// <summary>Only a container.</summary>
    None,

    /// <summary>A thing with parts of its own.</summary>
    GraphicsObject,

    /// <summary>A thing whose parts mean nothing by themselves.</summary>
    GraphicsSymbol,
}

/// <summary>Elements that belong together: a layer, a part, a strand.</summary>
public sealed record SceneGroup : SceneElement
{
    /// <param name="id">Name unique on the sheet, or null: an ASCII letter, then letters, digits, <c>- _ .</c></param>
    /// <param name="role">What the group is to a reader.</param>
    /// <param name="title">Its name for a reader; needed with a role.</param>
    /// <param name="description">More about it, or null.</param>
    /// <param name="children">Drawn in this order.</param>
    /// <exception cref="ArgumentException">The id has another form, or a role comes without a title.</exception>
    public SceneGroup(
        string? id, GroupRole role, string? title, string? description, IReadOnlyList<SceneElement> children)
    {
        if (id is not null && !SceneId.IsValid(id))
            throw new ArgumentException($"'{id}' cannot be an id: an ASCII letter, then letters, digits, - _ .", nameof(id));
        if (role != GroupRole.None && string.IsNullOrWhiteSpace(title))
            throw new ArgumentException("A group with a role needs a title, or a reader has nothing to say.", nameof(title));
        Id = id;
        Role = role;
        Title = title;
        Description = description;
        Children = children;
    }

    /// <summary>A plain container.</summary>
    public SceneGroup(string? id, IReadOnlyList<SceneElement> children)
        : this(id, GroupRole.None, null, null, children)
    {
    }

    public string? Id { get; }

    public GroupRole Role { get; }

    public string? Title { get; }

    public string? Description { get; }

    public IReadOnlyList<SceneElement> Children { get; }

    /// <summary>True when the same group stands on several sheets, so that its text is worth keeping.</summary>
    internal bool Repeats { get; init; }

    /// <summary>Its text as SVG, kept by the writer where it repeats.</summary>
    internal byte[]? Svg { get; set; }
}
