"""What the table foretold of carcasses and what their packages weighed: the shop's own figures."""

from collections.abc import Mapping, Sequence

from sqlalchemy import ColumnElement, Subquery, exists, func, select
from sqlalchemy.orm import InstrumentedAttribute, aliased

from db.desk import Desk
from db.tables.counted import Counted
from db.tables.findings import BlockRules, ExpectedYields
from db.tables.lots import Lots, Shares
from db.tables.orders import Orders
from db.tables.packages import Packages
from shared.cutting.own_figures import Made, OwnFigure, own_figures

WRAPPED = ("ready", "handed_over")
CountedFor = aliased(Orders)


def made_by_line() -> Subquery:
    """What the packages of each order's line weigh, void ones left out."""
    return (
        select(Packages.order_id, Packages.line, func.sum(Packages.net_ng).label("made_ng"))
        .where(Packages.void == "", Packages.line > 0)
        .group_by(Packages.order_id, Packages.line)
        .subquery()
    )


def all_weighed(lot_id: InstrumentedAttribute[int], cut: ColumnElement[str]) -> ColumnElement[bool]:
    """Whether no package of that cut of a lot was wrapped by count: such a cut says nothing."""
    return ~(
        select(Counted.id)
        .join(CountedFor, CountedFor.id == Counted.order_id)
        .where(CountedFor.lot_id == lot_id, Counted.cut == cut, Counted.void == "")
        .exists()
    )


def expected_by_line() -> Subquery:
    """What the table foretold of each order's line when it was cut."""
    return (
        select(
            ExpectedYields.order_id,
            ExpectedYields.line,
            ExpectedYields.cut,
            func.sum(ExpectedYields.expected_ng).label("expected_ng"),
            func.max(ExpectedYields.carcass_ng).label("carcass_ng"),
            func.max(ExpectedYields.id).label("last"),
        )
        .group_by(ExpectedYields.order_id, ExpectedYields.line, ExpectedYields.cut)
        .subquery()
    )


class YieldBook:
    """`work.yields`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def expect(self, animal_id: int, lines: Sequence[tuple[int, int, str, int, int]]) -> None:
        """What a carcass was to give by the table when it was cut.

        Each line: order, line, cut, nanograms expected, nanograms of the carcass.
        """
        told = {"animal_id": animal_id, "at": self._desk.now, **self._desk.stamp}
        names = ("order_id", "line", "cut", "expected_ng", "carcass_ng")
        self._desk.add_rows(
            ExpectedYields, [{**told, **dict(zip(names, one, strict=True))} for one in lines]
        )

    def made(self, species: str) -> tuple[Made, ...]:
        """Expected and made by lot and cut, oldest first, of orders that are wrapped; one query.

        A lot of one animal is one carcass; owners of one lot are added up, so that a side cut
        short for one and long for another says nothing of the table. An order that others are
        cut by is left out: part of what was made of its lines is on theirs.
        """
        made, expected = made_by_line(), expected_by_line()
        rows = self._desk.connection.execute(
            select(
                expected.c.cut,
                func.sum(expected.c.expected_ng),
                func.sum(made.c.made_ng),
                func.max(expected.c.carcass_ng),
            )
            .join(Orders, Orders.id == expected.c.order_id)
            .join(Lots, Lots.id == Orders.lot_id)
            .join(
                made,
                (made.c.order_id == expected.c.order_id) & (made.c.line == expected.c.line),
            )
            .where(
                Lots.species == species,
                Orders.state.in_(WRAPPED),
                ~exists().where(Shares.lot_id == Orders.lot_id, Shares.leader == Orders.share),
                all_weighed(Lots.id, expected.c.cut),
            )
            .group_by(Orders.lot_id, expected.c.cut)
            .order_by(func.max(expected.c.last))
        )
        return tuple(Made(row[0], int(row[1]), int(row[2]), int(row[3])) for row in rows)

    def figures(self, species: str) -> Mapping[str, OwnFigure]:
        """The shop's own figure of every cut it has wrapped of a species."""
        return own_figures(self.made(species))

    def used(self, species: str) -> Mapping[str, OwnFigure]:
        """The figures the forecast takes: none unless the shop has switched them on.

        Only those that differ from the table by more than chance, and by more than a fiftieth.
        """
        on = self._desk.connection.execute(select(BlockRules.own_figures)).scalar_one()
        if not on:
            return {}
        return {code: one for code, one in self.figures(species).items() if one.matters}
