"""What of an order is still here, by product, and what of it leaves now."""

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from desktop.fields.dates import date_text
from desktop.paper_words import in_language
from printing.words import LANGUAGES
from printing.words.choice_words import product_words
from shared.shop.freezing import Frozen, frozen

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence
    from datetime import datetime

    from printing.words import Words
    from shared.shop.counted import CountedPackages
    from shared.shop.freezing import FreezerRules, InFreezer
    from shared.shop.hand_overs import Boxed
    from shared.shop.packages import PackageMade


@dataclass(frozen=True, slots=True)
class Leaving:
    """One product of the order: what is still here of it, and what of that leaves now.

    `said` is what somebody said last of its freezing. `going` are the ids of labelled packages
    that leave, None all of them; what was wrapped by count has no code and leaves or stays as one.
    """

    product: str
    packages: "tuple[PackageMade, ...]"
    counted: "tuple[CountedPackages, ...]"
    where: str
    frozen: Frozen
    said: "InFreezer | None" = None
    going: frozenset[int] | None = None
    counts_stay: bool = False

    @property
    def now(self) -> "tuple[PackageMade, ...]":
        """The labelled packages that leave now."""
        if self.going is None:
            return self.packages
        return tuple(one for one in self.packages if one.id in self.going)

    @property
    def counts_now(self) -> "tuple[CountedPackages, ...]":
        """The counts that leave now."""
        return () if self.counts_stay else self.counted

    @property
    def stays(self) -> bool:
        """Whether nothing of it leaves now."""
        return not (self.now or self.counts_now)

    @property
    def whole(self) -> bool:
        """Whether all of it leaves now."""
        return self.leave_now == self.here

    @property
    def by_count(self) -> int:
        """Packages that leave now and were counted, not weighed."""
        return sum(one.packages for one in self.counts_now)

    @property
    def leave_now(self) -> int:
        """Packages that leave now."""
        return len(self.now) + self.by_count

    @property
    def here(self) -> int:
        """Packages that are here."""
        return len(self.packages) + sum(one.packages for one in self.counted)

    @property
    def nanograms(self) -> int:
        """Net weight of what leaves now, as far as it was weighed."""
        return sum(one.net.nanograms for one in self.now)

    def toggled(self) -> "Leaving":
        """All of it leaves where nothing did, else nothing of it."""
        if self.stays:
            return replace(self, going=None, counts_stay=False)
        return replace(self, going=frozenset(), counts_stay=True)

    def ticked(self, ids: frozenset[int], *, first: bool) -> "Leaving":
        """With the first scan only what was scanned leaves; each later one adds to it."""
        before = frozenset[int]() if first else frozenset(one.id for one in self.now)
        mine = ids & {one.id for one in self.packages}
        return replace(self, going=before | mine)


@dataclass(frozen=True, slots=True)
class Told:
    """What was said of the freezing of an order's packages and counts, by their ids."""

    packages: "Mapping[int, InFreezer]"
    counts: "Mapping[int, InFreezer]"


def leaving_rows(
    packages: "Sequence[PackageMade]",
    counted: "Sequence[CountedPackages]",
    places: "Mapping[int, Boxed]",
    rules: "FreezerRules",
    told: "Told",
    now: "datetime",
    named: "Callable[[PackageMade | CountedPackages], str]",
) -> list[Leaving]:
    """What is here, a row for each product in the order it was made.

    `named` names a product as it is shown, as `shown_name` does.
    """
    names = dict.fromkeys([*map(named, packages), *map(named, counted)])
    found: list[Leaving] = []
    for name in names:
        them = tuple(one for one in packages if named(one) == name)
        counts = tuple(one for one in counted if named(one) == name)
        said = [told.packages.get(one.id) for one in them]
        said += [told.counts.get(one.id) for one in counts]
        states = [
            frozen(rules, one.made_at, each, now)
            for one, each in zip([*them, *counts], said, strict=True)
        ]
        last = max((one for one in said if one and one.at), key=_said_at, default=None)
        found.append(Leaving(name, them, counts, _where(them, places), _slowest(states), last))
    return found


def shown_name(words: "Words", species: str, one: "PackageMade | CountedPackages") -> str:
    """A product in the language of the screen, where its label was printed in another.

    A name that is the shop's own, or older than the catalogue's, stays as it stands on the label.
    """
    for language in LANGUAGES:
        other = in_language(words, language)
        known = other is not words and other.has(f"cut.{one.cut}", species)
        if known and product_words(other, species, one.cut, one.finishes) == one.product:
            return product_words(words, species, one.cut, one.finishes)
    return one.product


def _slowest(found: "Sequence[Frozen]") -> Frozen:
    """Of several packages the one that is frozen last; one in no freezer before all others."""
    loose = next((one for one in found if one.state == "not_in_freezer"), None)
    dated = [one for one in found if one.at is not None]
    return loose or max(dated, key=_moment, default=found[0])


def _said_at(one: "InFreezer") -> "datetime":
    assert one.at is not None
    return one.at


def _moment(one: Frozen) -> "datetime":
    assert one.at is not None
    return one.at


def _where(packages: "Sequence[PackageMade]", places: "Mapping[int, Boxed]") -> str:
    boxed = [places[one.id] for one in packages if one.id in places]
    said = [", ".join(part for part in (one.box, one.place) if part) for one in boxed]
    return "; ".join(dict.fromkeys(said))


def frozen_words(one: Leaving, language: str) -> str:
    """Whether it is frozen, or when it will be."""
    translate = QCoreApplication.translate
    match one.frozen.state:
        case "frozen":
            return translate("HandOverDialog", "frozen")
        case "not_asked":
            return ""
        case "not_in_freezer":
            return translate("HandOverDialog", "in no freezer")
        case "freezing":
            assert one.frozen.at is not None
            at = one.frozen.at.astimezone()
            day = date_text(at.date(), language).split()[0]
            text = translate("HandOverDialog", "will be frozen {day} {time}")
            return text.format(day=day, time=f"{at:%H:%M}")
