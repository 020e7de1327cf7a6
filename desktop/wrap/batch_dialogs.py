"""What is asked of a batch: its recipe, the meat that goes in, its cure, its finished weight."""

from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog, TextField, WeightField
from printing.words.place_words import capital
from shared.carcass.anatomy import catalogue
from shared.curing.asked import FRESH, not_to_be_cured
from shared.curing.batch import Batch
from shared.curing.nitrite import WITH_BRINE
from shared.curing.recipe import Recipe
from shared.curing.recipe_text import decimal_text
from shared.shop.problems import Refused, StaleEdit
from shared.units import pounds_text, weight_text

if TYPE_CHECKING:
    from db.unit_of_work import Work
    from desktop.bench import Bench
    from shared.cutting.order import Choice
    from shared.shop.lists import OrderRow

BARRED = ("others_meat", "custom_with_inspected", "species")


class BeginBatch(FormDialog):
    """The recipe of a new batch. `made` is the batch."""

    def __init__(
        self, bench: "Bench", recipes: Sequence[Recipe], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self.made: Batch | None = None
        self.recipe: ChoiceField[int] = ChoiceField(self, required=True)
        self.recipe.set_choices([(one.id, one.name) for one in recipes])
        self.note = TextField(self)
        self.grid.add(self.recipe)
        self.grid.add(self.note)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("New batch"),
            self.tr("One owner's meat, or that of one animal's co-owners."),
            self.tr("&Begin"),
            self.tr("&Leave it"),
        )
        self.recipe.set_label(self.tr("&Recipe"))
        self.note.set_label(self.tr("&Note"))

    def attempt(self) -> str:
        recipe = self.recipe.value()
        assert recipe is not None
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            self.made = work.batches.begin(recipe, self.note.value() or "")
            work.commit()
        return ""


class PutMeatIn(FormDialog):
    """Meat of an order's line, as weighed; fat from inspected stock, with its source; or both."""

    def __init__(self, bench: "Bench", batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._batch = batch
        self._asked: tuple[int, int] | None = None
        with bench.store.read() as work:
            states = ("released", "cut", "ready")
            self._orders = work.orders.list(states=states, closed=False, sort="number")
        self.order: ChoiceField[int] = ChoiceField(self)
        self.line: ChoiceField[int] = ChoiceField(self)
        self.weight = WeightField(self)
        self.pieces = CountField(self, most=999)
        self.other = TextField(self)
        self.other_weight = WeightField(self)
        self.source = TextField(self)
        for field in (
            self.order,
            self.line,
            self.weight,
            self.pieces,
            self.other,
            self.other_weight,
        ):
            self.grid.add(field)
        self.grid.add(self.source, 2)
        self.order.changed.connect(self._ordered)
        for field in (self.weight, self.other, self.other_weight):
            field.changed.connect(self._asks_no_more)
        self.retranslate()
        last = batch.standing[-1] if batch.standing else None
        if last is not None and any(one.id == last.order_id for one in self._orders):
            self.order.set_value(last.order_id)
            self._ordered()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Put meat into batch {number}").format(number=self._batch.number),
            self.tr(
                "The raw weight of one owner's pieces or trim. Fat or pork from elsewhere must "
                "come from inspected stock: say what it is and from which box or lot."
            ),
            self.tr("&Put it in"),
            self.tr("&Leave it"),
        )
        self.order.set_label(self.tr("&Order"))
        self.order.set_choices([(one.id, self._order_words(one)) for one in self._orders])
        self.line.set_label(self.tr("L&ine"))
        self.weight.set_label(self.tr("&Weight"))
        self.pieces.set_label(self.tr("Pi&eces"))
        self.other.set_label(self.tr("&Fat or pork from elsewhere"))
        self.other_weight.set_label(self.tr("Pou&nds of it"))
        self.source.set_label(self.tr("Its so&urce"))

    def attempt(self) -> str:
        if self._lacking():
            return ""
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            put = self._put_meat(work)
            if not isinstance(put, Refused | str):
                put = self._put_other(work) or put
            if isinstance(put, Batch):
                work.commit()
                return ""
        return put if isinstance(put, str) else self._refused(put or Refused("not_positive"))

    def _lacking(self) -> bool:
        """Whether something is named without its pounds, or pounds without their name."""
        missing = self.tr("Fill this in.")
        named, pounds = not self.other.is_empty(), not self.other_weight.is_empty()
        lacking = self.weight if not (named or pounds) and self.weight.is_empty() else None
        if named != pounds:
            lacking = self.other_weight if named else self.other
        if lacking is not None:
            lacking.complain(missing)
            lacking.focus()
        elif named and self.source.is_empty():
            self.source.complain(self.tr("From which inspected box or lot?"))
            self.source.focus()
            return True
        return lacking is not None

    def _asks_no_more(self) -> None:
        """What one of them lacked may be mended at another."""
        for field in (self.weight, self.other, self.other_weight):
            field.complain("")

    def _put_meat(self, work: "Work") -> "Batch | Refused | str | None":
        """The order's meat where it was weighed; a sentence where something is to be asked."""
        weight, order, line = self.weight.value(), self.order.value(), self.line.value()
        if weight is None:
            return None
        if order is None or line is None:
            return self.tr("Choose the order and its line.")
        found = work.orders.get(order)
        choices = found.choices if found else ()
        one = next((one for one in choices if one.line == line), None)
        asked = self._ask(order, one) if one is not None else ""
        if asked:
            return asked
        cut, pieces = one.cut if one is not None else "", self.pieces.value() or 0
        return work.batches.put_in(self._batch.id, order, line, cut, weight, pieces)

    def _put_other(self, work: "Work") -> "Batch | Refused | None":
        """What comes from elsewhere, where it was weighed."""
        pounds = self.other_weight.value()
        if pounds is None:
            return None
        what, source = self.other.value() or "", self.source.value() or ""
        return work.batches.add(self._batch.id, what, pounds, source)

    def _ask(self, order_id: int, choice: "Choice") -> str:
        """Asked once of a line that doesn't say it is cured, before a cure has it."""
        row = next(one for one in self._orders if one.id == order_id)
        known = catalogue(row.species)
        at = (order_id, choice.line)
        uncured = not_to_be_cured(known, choice.cut, choice.finishes)
        if self._batch.cure is None or not uncured or self._asked == at:
            return ""
        self._asked = at
        words = self.bench.words
        name = capital(words.name(row.species, f"cut.{choice.cut}"))
        if FRESH in choice.finishes:
            said = self.tr("{cut}: the order says fresh. Ask the owner; Ctrl+Enter cures it.")
        else:
            said = self.tr(
                "{cut}: the order doesn't say fresh or cured. Ask the owner; Ctrl+Enter cures it."
            )
        return said.format(cut=name)

    def _refused(self, put: Refused) -> str:
        if put.code in BARRED:
            return self.bench.words.say(f"batches.barred_{put.code}", 1, **put.data)
        if put.code == "source_missing":
            self.source.complain(self.tr("From which inspected box or lot?"))
            return self.tr("Say the source.")
        if put.code == "not_gathering":
            return self.tr("The batch has gone on; nothing more goes in.")
        return self.tr("A weight above nothing is needed.")

    def _ordered(self) -> None:
        order_id = self.order.value()
        if order_id is None:
            self.line.set_choices([])
            return
        with self.bench.store.read() as work:
            order = work.orders.get(order_id)
        row = next(one for one in self._orders if one.id == order_id)
        words = self.bench.words
        choices = order.choices if order is not None else ()
        fitting = [one for one in choices if self._batch.finish in one.finishes]
        self.line.set_choices(
            [
                (one.line, capital(words.name(row.species, f"cut.{one.cut}")))
                for one in (*fitting, *(one for one in choices if one not in fitting))
            ]
        )
        if fitting:
            self.line.set_value(fitting[0].line)

    def _order_words(self, one: "OrderRow") -> str:
        animal = self.bench.words.name(one.species, f"species.{one.species}")
        owner = one.owner or self.tr("to be named")  # within the f-string lupdate doesn't see it
        return f"{one.number} · {owner} · {animal} {one.tags}"


class CureFacts(FormDialog):
    """The cure that went in; with a brine its weight and the pick-up too."""

    def __init__(self, bench: "Bench", batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._batch = batch
        assert batch.cure is not None
        self.cure = WeightField(self)
        self.brine = WeightField(self)
        self.pickup = TextField(self, most=8)
        self.cure.set_value(batch.cure.cure)
        self.brine.set_value(batch.cure.brine)
        if batch.cure.pickup is not None:
            self.pickup.set_value(decimal_text(batch.cure.pickup * 100))
        self.grid.add(self.cure)
        if batch.cure.product in WITH_BRINE:
            self.grid.add(self.brine)
            self.grid.add(self.pickup)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Cure of batch {number}").format(number=self._batch.number),
            self.bench.words.say("batches.caution"),
            self.tr("&Check it"),
            self.tr("&Leave it"),
        )
        self.cure.set_label(self.tr("Cure mi&x that went in"))
        self.brine.set_label(self.tr("Whole &brine, cure and all"))
        self.pickup.set_label(self.tr("&Pick-up, in percent of the raw weight"))

    def attempt(self) -> str:
        pickup = _share(self.pickup.text())
        if pickup is None and self.pickup.text().strip():
            self.pickup.complain(self.tr("A percentage above nothing, like 12.5."))
            return self.tr("Say the pick-up as it was weighed.")
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            said = work.batches.say_cure(
                self._batch, cure=self.cure.value(), brine=self.brine.value(), pickup=pickup
            )
            if isinstance(said, StaleEdit):
                return self.tr("Another station has changed this batch. Look again.")
            work.commit()
        return ""


class WeighOut(FormDialog):
    """The finished weight; it is divided by the weight that went in, to the scale's last step."""

    def __init__(self, bench: "Bench", batch: Batch, parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=2)
        self.bench = bench
        self._batch = batch
        self.weight = WeightField(self, required=True)
        self.note = TextField(self)
        self.grid.add(self.weight)
        self.grid.add(self.note)
        self.retranslate()

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Batch {number} is done").format(number=self._batch.number),
            self.tr("Weigh all of it. Each owner's part goes by the weight that went in."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.weight.set_label(self.tr("&Finished weight"))
        self.note.set_label(self.tr("&Note"))

    def attempt(self) -> str:
        out, into = self.weight.value(), self._batch.whole_ng
        if out is not None and out.nanograms > into and self.note.is_empty():
            said = self.tr(
                "{out} is more than the {into} that went in. Weigh again, or say in the note what "
                "it took up, such as brine."
            )
            return said.format(out=weight_text(out), into=pounds_text(into, 2))
        with self.bench.store.work(self.bench.person, self.bench.station) as work:
            made = work.batches.move(
                self._batch, "done", self.note.value() or "", self.weight.value()
            )
            if isinstance(made, Batch):
                work.commit()
                return ""
        if isinstance(made, StaleEdit):
            return self.tr("Another station has changed this batch. Look again.")
        return self.tr("Nothing is in the batch, or the weight isn't above nothing.")


def _share(text: str) -> Fraction | None:
    try:
        share = Fraction(text.strip().rstrip("%").strip()) / 100
    except (ValueError, ZeroDivisionError):
        return None
    return share if share > 0 else None
