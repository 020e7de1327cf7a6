"""`steelyard figures SPECIES [CUT]`: every figure the program plans with, and where it is from."""

import argparse
from typing import TYPE_CHECKING

from desktop.shell.context import (
    DONE,
    WRONG,
    CommandError,
    Commands,
    guarded,
    say,
    words_of,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from fractions import Fraction

    from printing.words import Words
    from shared.carcass.figure_list import Figure

NAME_WIDE, WIDE = 26, 12


def add_to(commands: Commands, everywhere: argparse.ArgumentParser) -> None:
    """Put the command into the command line."""
    command = commands.add_parser(
        "figures",
        parents=[everywhere],
        help="show the figures of an animal or a cut, each with its source",
        description="Prints what the program takes an animal to be: dressing, lengths, parts, "
        "cuts and finishes, each figure with its source, or “from memory”. With a cut, only what "
        "that cut takes. Exit status 0, or 2 for an animal or a cut there is none of.",
    )
    command.add_argument("species", metavar="SPECIES", help="for one: pork, beef, deer")
    command.add_argument("cut", metavar="CUT", nargs="?", default="", help="for one: rib_chop")
    command.add_argument("--json", action="store_true", help="print the figures as JSON")
    command.set_defaults(run=guarded(run))


def run(given: argparse.Namespace) -> int:
    """Find them, print them."""
    from shared.carcass import anatomy, figure_list

    words = words_of(given)
    known = anatomy.species()
    if given.species not in known:
        text = words.say("shell.no_species", name=given.species, known=", ".join(known))
        raise CommandError(text, WRONG)
    catalogue = anatomy.catalogue(given.species)
    if given.cut and given.cut not in catalogue.cuts:
        text = words.say("shell.no_cut", name=given.cut, known=", ".join(catalogue.cuts))
        raise CommandError(text, WRONG)
    found = figure_list.figures(catalogue, given.cut)
    if given.json:
        say(as_json(given.species, found))
    else:
        say("\n".join(as_text(given.species, found, words, catalogue.reference_dressing)))
    return DONE


def as_text(
    species: str, found: "Sequence[Figure]", words: "Words", dressing: str
) -> "Iterator[str]":
    """A line for each thing and one for each of its figures; a source once in full at the end."""
    yield words.say("shell.figures_of", animal=words.name(species, f"species.{species}"))
    yield words.say("shell.reference", dressing=dressing)
    last = ("", "")
    for one in found:
        if (one.group, one.code) != last:
            last = (one.group, one.code)
            yield ""
            yield f"{words.name(species, f'{_KEYS[one.group]}.{one.code}')} ({one.code})"
        name = figure_name(one, words)
        yield f"  {name:<{NAME_WIDE}}  {figure_text(one):<{WIDE}}  {one.source}"
    yield ""
    yield words.say("shell.sources")
    keys = dict.fromkeys((one.source, one.told) for one in found if one.source != one.told)
    for source, told in keys:
        yield f"  {source} = {told}"


_KEYS = {
    "animal": "species",
    "stretch": "stretch",
    "part": "part",
    "cut": "cut",
    "finish": "finish",
}


def figure_name(figure: "Figure", words: "Words") -> str:
    """What a figure is called, such as "usual dressing, grass fed" or "trimmed off, fat"."""
    name, _, more = figure.name.partition(".")
    if more and figure.group == "cut":
        return words.say(f"figure.trimmed_{more}")
    said = words.say(f"figure.{name}")
    return f"{said}, {more.replace('_', ' ')}" if more else said


def figure_text(figure: "Figure") -> str:
    """A figure as the shop reads it: "2 %", "14 in", "1 lb", "60 to 64 %", "10 to 21"."""
    from shared.units import length_text, pounds_text

    if figure.kind == "length":
        return length_text(int(figure.value))
    if figure.kind == "weight":
        return pounds_text(int(figure.value), 2)
    if figure.kind in ("count", "days"):
        end = "" if figure.to is None else f"–{figure.to}"
        return f"{figure.value}{end}"
    if figure.to is not None:
        return f"{percent(figure.value)}–{percent(figure.to)} %"
    return f"{percent(figure.value)} %"


def percent(value: "Fraction") -> str:
    """Per cent to two places, half up, without idle noughts: 473/10000 is "4.73", 1/2 is "50"."""
    hundredths = (value * 20000 + 1) // 2
    whole, rest = divmod(int(hundredths), 100)
    return f"{whole}.{rest:02}".rstrip("0").rstrip(".")


def as_json(species: str, found: "Sequence[Figure]") -> str:
    """The figures as JSON: exact values as texts, with kind, source and the source in full."""
    import json

    rows = [
        {
            "of": one.group,
            "code": one.code,
            "figure": one.name,
            "kind": one.kind,
            "value": str(one.value),
            "to": None if one.to is None else str(one.to),
            "text": figure_text(one),
            "source": one.source,
            "told": one.told,
        }
        for one in found
    ]
    return json.dumps({"species": species, "figures": rows}, ensure_ascii=False, indent=1)
