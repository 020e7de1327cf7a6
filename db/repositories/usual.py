"""The shop's own usual lines by species and primal, and how it cuts split sides."""

from collections.abc import Sequence

from sqlalchemy import delete, select

from db.choice_text import choice_from, choice_text
from db.desk import Desk
from db.tables.usual import UsualLines
from db.tables.usual import UsualRules as Rules
from shared.carcass.catalogue import UsualLine
from shared.shop.problems import StaleEdit
from shared.shop.usual import UsualRules, UsualWay, as_choice, as_usual


class UsualBook:
    """`work.usual`."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def ways(self, species: str) -> tuple[UsualWay, ...]:
        """The shop's own ways of a species; primals without one keep the species file's."""
        found: dict[tuple[str, int], list[UsualLine]] = {}
        for primal, variant, text in self._desk.connection.execute(
            select(UsualLines.primal, UsualLines.variant, UsualLines.choice)
            .where(UsualLines.species == species)
            .order_by(UsualLines.primal, UsualLines.variant, UsualLines.place)
        ):
            found.setdefault((primal, variant), []).append(as_usual(choice_from(text), primal))
        return tuple(
            UsualWay(species, primal, variant, tuple(lines))
            for (primal, variant), lines in found.items()
        )

    def save(self, species: str, primal: str, ways: Sequence[Sequence[UsualLine]]) -> None:
        """Write a primal's ways over, the first one being what the shop does unasked.

        None at all goes back to the species file's.
        """
        desk = self._desk
        desk.must_write()
        desk.connection.execute(
            delete(UsualLines).where(UsualLines.species == species, UsualLines.primal == primal)
        )
        kept = [tuple(lines) for lines in ways if lines]
        desk.add_rows(
            UsualLines,
            [
                {
                    "species": species,
                    "primal": primal,
                    "variant": variant,
                    "place": place,
                    "cut": line.cut,
                    "choice": choice_text(as_choice(line)),
                }
                for variant, lines in enumerate(kept, start=1)
                for place, line in enumerate(lines, start=1)
            ],
        )
        cuts = "; ".join(", ".join(line.cut for line in lines) for lines in kept)
        desk.record("usual", 1, "saved", species=species, primal=primal, cuts=cuts)

    def rules(self) -> UsualRules:
        """How split sides are cut."""
        row = self._desk.connection.execute(select(Rules.cut_alike, Rules.version)).one()
        return UsualRules(row[0], row[1])

    def save_rules(self, rules: UsualRules) -> UsualRules | StaleEdit:
        """Write it; the version read must still hold."""
        values: dict[str, object] = {"cut_alike": rules.cut_alike}
        stale = self._desk.edit(Rules, "usual_rules", 1, rules.version, values)
        if stale is not None:
            return stale
        self._desk.record("usual_rules", 1, "saved", cut_alike=rules.cut_alike)
        return self.rules()
