"""Package counts: what was planned beside what was made, by cut and owner, and the take-home."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from fractions import Fraction

from printing.letterhead import Letterhead, notes, number_text, open_paper, pounds, sender
from printing.page import Column, Paper, table
from printing.words import Words
from printing.words.place_words import capital
from shared.carcass.catalogue import Catalogue
from shared.cutting.divided import packages_dealt
from shared.cutting.forecast import Forecast, Range
from shared.cutting.order import Choice, Question
from shared.shop.counted import CountedPackages, CountedWeight, weight_together
from shared.shop.details import ShopDetails
from shared.shop.packages import PackageMade
from shared.units import NG_PER_LB


@dataclass(frozen=True, slots=True)
class Counted:
    """One cut of one owner: planned packages and nanograms, made packages and pounds.

    `planned` None: it stands on no line of the order, or the plan makes nothing of it. `by_count`
    of the packages were counted: their pounds aren't in `finished`. `together` were counted and
    weighed once together: `finished` holds that.
    """

    cut: str
    finishes: tuple[str, ...]
    planned: Range | None
    planned_ng: int
    packages: int
    finished: Fraction
    product: str = ""
    by_count: int = 0
    together: int = 0


@dataclass(frozen=True, slots=True)
class ShareCounts:
    """One owner's counts; `hanging` is his hanging weight in pounds, None while it waits."""

    owner: str
    order_number: int
    hanging: Fraction | None
    rows: tuple[Counted, ...]

    @property
    def packages(self) -> int:
        """All packages made."""
        return sum(row.packages for row in self.rows)

    @property
    def by_count(self) -> int:
        """Packages that were counted and not weighed."""
        return sum(row.by_count for row in self.rows)

    @property
    def finished(self) -> Fraction:
        """All pounds weighed."""
        return sum((row.finished for row in self.rows), Fraction(0))

    @property
    def take_home(self) -> Fraction | None:
        """Made pounds in per cent of the hanging weight: 556.92 of 819 lb is 68.

        None where a package was counted: what it weighs isn't known.
        """
        return self.finished / self.hanging * 100 if self.hanging and not self.by_count else None


def share_counts(
    question: Question,
    catalogue: Catalogue,
    forecast: Forecast,
    share: int,
    packages: Iterable[PackageMade],
    *,
    order_number: int,
    hanging: Fraction | None,
    counted: Iterable[CountedPackages] = (),
    weights: Iterable[CountedWeight] = (),
) -> ShareCounts:
    """Planned beside made of one share, in the order's lines; void packages are left out."""
    together = [one for one in weights if one.share == share]
    own = [one for one in packages if one.share == share and not one.void]
    counts = [one for one in counted if one.share == share and not one.void]
    leader = next((one.leader for one in question.shares if one.number == share), None) or share
    choices = [one for one in question.choices if one.share == leader]
    lines = {choice.line for choice in choices}
    owner = next((one.owner for one in question.shares if one.number == share), "")
    rows = [
        _dealt(
            _of_line(choice, forecast, made_of(own, choice), _by_count(counts, choice), together),
            question,
            leader,
            share,
        )
        for choice in choices
        if catalogue.cuts[choice.cut].kind != "to_trim" or made_of(own, choice)
    ]
    rows += _off_the_order([one for one in own if one.line not in lines])
    return ShareCounts(owner, order_number, hanging, tuple(rows))


def counts(
    shares: Sequence[ShareCounts],
    *,
    species: str,
    lot_number: int,
    tags: Sequence[str],
    shop: ShopDetails,
    made: datetime,
    words: Words,
) -> bytes:
    """The counts of a lot's owners as PDF, one table for each."""
    told = ", ".join(tag for tag in tags if tag)
    owners = dict.fromkeys(share.owner for share in shares)
    corner = (*owners, words.say("bills.tag", len(tags), tags=told) if told else "")
    head = Letterhead(
        sender=sender(shop),
        title=words.say("bills.counts_title"),
        corner=tuple(line for line in corner if line),
        facts=((words.say("bills.lot"), str(lot_number)),),
    )
    source = words.say("bills.counts_source")
    paper = open_paper(shop.paper, head, source, made, words)
    for share in shares:
        _draw(paper, share, species, words)
    by_count = any(share.by_count for share in shares)
    said = [words.say("bills.note_counts_by_count" if by_count else "bills.note_counts")]
    if any(row.together for share in shares for row in share.rows):
        said.append(words.say("bills.note_together"))
    notes(paper, said)
    return paper.pdf()


def made_of(packages: Iterable[PackageMade], choice: Choice) -> list[PackageMade]:
    """The packages of one line."""
    return [one for one in packages if one.line == choice.line]


def _by_count(counted: Iterable[CountedPackages], choice: Choice) -> int:
    return sum(one.packages for one in counted if one.line == choice.line)


def _dealt(row: Counted, question: Question, leader: int, share: int) -> Counted:
    """What is planned of a share that leads others or is led: its part of the packages.

    Worked number: 7 packages of two halves of a side are 4 for the lower number and 3.
    """
    shares = question.shares
    if row.planned is None or not any(one.leader == leader for one in shares):
        return row
    planned = row.planned
    low, mid, high = (
        packages_dealt(count, leader, shares)[share]
        for count in (planned.low, planned.mid, planned.high)
    )
    weight = row.planned_ng * mid // planned.mid if planned.mid else 0
    return replace(row, planned=Range(low, mid, high), planned_ng=weight)


def _of_line(
    choice: Choice,
    forecast: Forecast,
    made: Sequence[PackageMade],
    by_count: int,
    weights: Sequence[CountedWeight],
) -> Counted:
    whole = weight_together(choice.line, by_count, weights)
    planned = forecast.line(choice.line)
    return Counted(
        cut=choice.cut,
        finishes=choice.finishes,
        planned=planned.packages if planned else None,
        planned_ng=planned.finished.mid if planned else 0,
        packages=len(made) + by_count,
        finished=_pounds(made) + (whole.net.pounds if whole else 0),
        by_count=0 if whole else by_count,
        together=by_count if whole else 0,
    )


def _off_the_order(made: Sequence[PackageMade]) -> Iterator[Counted]:
    kinds: dict[tuple[str, tuple[str, ...], str], list[PackageMade]] = {}
    for one in made:
        kinds.setdefault((one.cut, one.finishes, one.product), []).append(one)
    for (cut, finishes, product), ones in kinds.items():
        yield Counted(cut, finishes, None, 0, len(ones), _pounds(ones), product)


def _pounds(made: Iterable[PackageMade]) -> Fraction:
    return sum((one.net.pounds for one in made), Fraction(0))


def _draw(paper: Paper, share: ShareCounts, species: str, words: Words) -> None:
    paper.need(110)
    paper.skip(6)
    title = words.say("bills.owner_order", owner=share.owner, number=share.order_number)
    paper.paragraph(0, title, 13, paper.room, "bold")
    paper.skip(4)
    columns = (
        Column(words.say("bills.cut"), paper.room - 316),
        Column(words.say("bills.planned_packages"), 76, "right"),
        Column(words.say("bills.made_packages"), 76, "right"),
        Column(words.say("bills.planned_pounds"), 82, "right"),
        Column(words.say("bills.made_pounds"), 82, "right"),
    )
    rows = [_row(row, species, words) for row in share.rows]
    planned = sum(row.planned_ng for row in share.rows)
    rows.append(
        (
            words.say("bills.all"),
            _range(share.rows),
            str(share.packages),
            number_text(Fraction(planned, NG_PER_LB), 1, 1),
            net_text(share, words),
        )
    )
    table(paper, columns, rows)
    paper.skip(4)
    paper.paragraph(0, _take_home(share, words), 11, paper.room, "semibold")
    paper.skip(8)


def _row(row: Counted, species: str, words: Words) -> tuple[str, ...]:
    pounds_planned = number_text(Fraction(row.planned_ng, NG_PER_LB), 1, 1)
    name = row.product or words.name(species, f"cut.{row.cut}", 2)
    done = [words.name(species, f"finish.{one}") for one in row.finishes]
    what = capital(", ".join((name, *done)))
    if row.product:
        what = f"{what}\n{words.say('bills.not_on_order')}"
    return (
        what,
        range_text(row.planned) if row.planned else "–",
        str(row.packages) if row.packages else "–",
        pounds_planned if row.planned else "–",
        net_text(row, words) if row.packages else "–",
    )


def net_text(what: Counted | ShareCounts, words: Words) -> str:
    """Its pounds; of what was counted, in place of them or below them, that they aren't known."""
    if isinstance(what, Counted) and what.together:
        also = words.say("bills.together", number=what.together)
        return f"{number_text(what.finished, 2)}\n{also}"
    if not what.by_count:
        return number_text(what.finished, 2)
    if what.by_count == what.packages:
        return words.say("bills.by_count")
    also = words.say("bills.more_by_count", number=what.by_count)
    return f"{number_text(what.finished, 2)}\n{also}"


def range_text(count: Range) -> str:
    """Packages with what they may be: "15–18", or "4" where it is sure."""
    return str(count.mid) if count.low == count.high else f"{count.low}–{count.high}"


def _range(rows: Sequence[Counted]) -> str:
    known = [row.planned for row in rows if row.planned]
    low, mid, high = (sum(getattr(one, name) for one in known) for name in ("low", "mid", "high"))
    return range_text(Range(low, mid, high))


def _take_home(share: ShareCounts, words: Words) -> str:
    percent = share.take_home
    if share.by_count:
        made, count = pounds(share.finished), share.by_count
        return words.say("bills.take_home_by_count", count, made=made, number=count)
    if percent is None or share.hanging is None:
        return words.say("bills.take_home_waits", made=pounds(share.finished))
    return words.say(
        "bills.take_home",
        made=pounds(share.finished),
        hanging=pounds(share.hanging),
        percent=number_text(percent, 1, 1),
    )
