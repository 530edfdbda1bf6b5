using System.Globalization;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Findings;

/// <summary>What kind of thing a finding speaks of.</summary>
public enum SubjectKind
{
    /// <summary>The workbook as a whole.</summary>
    Book,

    /// <summary>A column of a list of pieces; the key is a <see cref="PieceField"/>.</summary>
    Column,

    /// <summary>A row of a list of pieces; the key is <see cref="Piece.Id"/>.</summary>
    Piece,

    /// <summary>A flask of tonight; the key is its letter.</summary>
    Flask,

    /// <summary>A flask size the shop owns; the key is its name.</summary>
    FlaskSize,

    /// <summary>A crucible; the key is its name.</summary>
    Crucible,

    /// <summary>A kiln; the key is its name.</summary>
    Kiln,

    /// <summary>An alloy; the key is its name as the shop writes it.</summary>
    Alloy,

    /// <summary>A pattern material; the key is its name as the shop writes it.</summary>
    Material,

    /// <summary>An investment powder; the key is its name.</summary>
    Investment,

    /// <summary>A burnout schedule; the key is its name.</summary>
    Schedule,

    /// <summary>A setting of the Shop sheet; the key is the setting's name.</summary>
    Setting,

    /// <summary>A step of the night; the key is its place in the clock.</summary>
    Step,

    /// <summary>A moment of a kiln load's course; the key is the load's number, a point, and the moment's place.</summary>
    Moment,
}

/// <summary>What a finding is about, and which field of it. Only the workbook side turns it into a cell.</summary>
/// <param name="Kind">The kind of thing.</param>
/// <param name="Key">Which one: a piece's id, a flask's letter, a setting's name. Empty for the book.</param>
/// <param name="Field">Which field of it, a constant of <see cref="PieceField"/> or <see cref="ShopField"/>; of a column its sheet; empty for the whole.</param>
public readonly record struct Subject(SubjectKind Kind, string Key, string Field = "")
{
    /// <summary>The workbook as a whole.</summary>
    public static Subject Book { get; } = new(SubjectKind.Book, "");

    /// <summary>A column of the list of pieces.</summary>
    /// <param name="field">A constant of <see cref="PieceField"/>.</param>
    /// <param name="sheet">The sheet of the list, where the book has several and it is not the first.</param>
    public static Subject Column(string field, string sheet = "") => new(SubjectKind.Column, field, sheet);

    /// <summary>A row of the list of pieces.</summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="field">A constant of <see cref="PieceField"/>, or empty for the whole row.</param>
    public static Subject Piece(int id, string field = "") =>
        new(SubjectKind.Piece, id.ToString(CultureInfo.InvariantCulture), field);

    /// <summary>A flask of tonight.</summary>
    /// <param name="letter">The flask's letter.</param>
    /// <param name="field">A constant of <see cref="ShopField"/>, or empty.</param>
    public static Subject Flask(string letter, string field = "") => new(SubjectKind.Flask, letter, field);

    /// <summary>A setting of the Shop sheet.</summary>
    /// <param name="name">The setting's name, a constant of <see cref="SettingName"/> or an alloy question.</param>
    public static Subject Setting(string name) => new(SubjectKind.Setting, name);
}
