"""The cells of an order's table: the cut and its size, its finish and package, counts."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.counter.ground_fields import stock_words
from shared.curing.asked import left_open
from shared.cutting.breaking import package_of
from shared.units import length_text, weight_text

if TYPE_CHECKING:
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.forecast import Range
    from shared.cutting.order import Choice

FRACTIONS = (Fraction(1, 2), Fraction(1, 3), Fraction(1, 4), Fraction(2, 3), Fraction(3, 4))


def kind_words(kind: str) -> str:
    """A kind of amount, as it is chosen."""
    words = {
        "all": QCoreApplication.translate("ChoiceWords", "all"),
        "rest": QCoreApplication.translate("ChoiceWords", "the rest"),
        "pieces": QCoreApplication.translate("ChoiceWords", "so many pieces"),
        "slices": QCoreApplication.translate("ChoiceWords", "so many slices"),
        "pounds": QCoreApplication.translate("ChoiceWords", "so many pounds"),
        "fraction": QCoreApplication.translate("ChoiceWords", "a fraction"),
        "up_to": QCoreApplication.translate("ChoiceWords", "up to so many"),
        "at_least": QCoreApplication.translate("ChoiceWords", "at least so many"),
    }
    return words[kind]


def cut_words(choice: "Choice", catalogue: "Catalogue", words: "Words") -> str:
    """The cut and what sets its size: "ham steak, ¾ in"."""
    cut = catalogue.cuts[choice.cut]
    parts = [words.name(catalogue.species, f"cut.{choice.cut}", 1)]
    thickness = choice.thickness if choice.thickness is not None else cut.thickness
    if thickness is not None:
        parts.append(length_text(thickness))
    if choice.ribs:
        parts.append(
            QCoreApplication.translate("ChoiceWords", "{count} ribs").format(count=choice.ribs)
        )
    if choice.piece_weight is not None:
        parts.append(
            QCoreApplication.translate("ChoiceWords", "{weight} each").format(
                weight=weight_text(choice.piece_weight)
            )
        )
    if choice.lean is not None:
        parts.append(
            QCoreApplication.translate("ChoiceWords", "{percent} % lean").format(
                percent=int(choice.lean * 100)
            )
        )
    return ", ".join(parts)


def finish_words(choice: "Choice", catalogue: "Catalogue", words: "Words") -> str:
    """Finishes, package and note: "cured and smoked, 2 to a package"; what is left open."""
    parts = [words.name(catalogue.species, f"finish.{code}") for code in choice.finishes]
    if left_open(catalogue, choice.cut, choice.finishes):
        parts.insert(0, QCoreApplication.translate("ChoiceWords", "fresh or cured?"))
    cut = catalogue.cuts[choice.cut]
    if cut.kind != "to_trim":
        package = package_of(choice, cut)
        if package.weight is not None:
            parts.append(
                QCoreApplication.translate("ChoiceWords", "{weight} a package").format(
                    weight=weight_text(package.weight)
                )
            )
        elif package.pieces:
            parts.append(
                QCoreApplication.translate("ChoiceWords", "{count} to a package").format(
                    count=package.pieces
                )
            )
    if choice.seasoning:
        parts.append(choice.seasoning)
    if choice.added is not None:
        stock = dict(stock_words())[choice.added.of]
        parts.append(QCoreApplication.translate("ChoiceWords", "with {stock}").format(stock=stock))
    if choice.note:
        parts.append(f"“{choice.note}”")
    return ", ".join(parts)


def range_words(found: "Range") -> str:
    """A count with its range: "12", or "11–13"."""
    return str(found.mid) if found.low == found.high else f"{found.low}–{found.high}"
