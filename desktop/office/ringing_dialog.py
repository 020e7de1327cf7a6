"""The shop's rules of ringing and freezing: when sheets are due, and when a package is frozen."""

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, CountField, FormDialog
from desktop.fields.dates import date_text
from desktop.panels.heading import Words
from shared.shop.calls import MOST_CALLS, MOST_DAYS, CallRules
from shared.shop.freezing import MOST_HOURS, FreezerRules
from shared.shop.problems import StaleEdit

if TYPE_CHECKING:
    from desktop.bench import Bench
    from shared.shop.calls import CountedFrom, WithoutAnswer
    from shared.shop.freezing import FreezeFrom

KEPT = ("call_rules", "freezer_rules")


class RingingDialog(FormDialog):
    """Keeps the rules; below the fields stands who set them last, and when."""

    def __init__(self, bench: "Bench", parent: QWidget | None = None) -> None:
        super().__init__(parent, columns=3)
        self._bench = bench
        self._make()
        self.retranslate()
        self._read()
        self._only_asked()

    def _make(self) -> None:
        self.due = CountField(self, required=True, most=MOST_DAYS)
        self.counted: ChoiceField[CountedFrom] = ChoiceField(self, required=True)
        self.remind = CountField(self, required=True, most=MOST_DAYS)
        self.without: ChoiceField[WithoutAnswer] = ChoiceField(self, required=True)
        self.calls = CountField(self, required=True, least=1, most=MOST_CALLS)
        self.hours = CountField(self, required=True, most=MOST_HOURS)
        self.frozen: ChoiceField[FreezeFrom] = ChoiceField(self, required=True)
        for field in (self.due, self.counted, self.remind, self.without, self.calls):
            self.grid.add(field)
        self.grid.add(self.hours)
        self.grid.add(self.frozen, span=2)
        self.kept = Words("small", "quiet", self).wrapped()
        self.add_below(self.kept)
        self.without.changed.connect(self._only_asked)
        self.hours.changed.connect(self._only_asked)

    def retranslate(self) -> None:
        self.set_words(
            self.tr("Ringing and freezing"),
            self.tr(
                "A day written on an order goes before these. With 0 hours in the freezer the "
                "hand-over doesn't ask whether it is frozen."
            ),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.due.set_label(self.tr("Cut sheet due, &days"))
        self.counted.set_label(self.tr("&Counted"))
        self.counted.set_choices(
            [("kill", self.tr("after the kill")), ("block", self.tr("before the block"))]
        )
        self.remind.set_label(self.tr("&Ring from so many days before"))
        self.without.set_label(self.tr("Without an &answer"))
        self.without.set_choices(
            [
                ("ring", self.tr("ring on")),
                ("usual", self.tr("cut the house's usual")),
                ("hang", self.tr("let it hang")),
            ]
        )
        self.calls.set_label(self.tr("After so &many calls"))
        self.hours.set_label(self.tr("Frozen after &hours in the freezer"))
        self.frozen.set_label(self.tr("Where nobody said &when it went in"))
        self.frozen.set_choices(
            [
                ("label", self.tr("counted from its label")),
                ("place", self.tr("held until somebody says so")),
            ]
        )

    def _read(self) -> None:
        with self._bench.store.read() as work:
            self._calls: CallRules = work.calls.rules()
            self._freezer: FreezerRules = work.freezing.rules()
            changes = work.changes.of_all(dict.fromkeys(KEPT, (1,)))
        self.due.set_value(self._calls.due_days)
        self.counted.set_value(self._calls.counted_from)
        self.remind.set_value(self._calls.remind_days)
        self.without.set_value(self._calls.without_answer)
        self.calls.set_value(self._calls.most_calls)
        self.hours.set_value(self._freezer.hours)
        self.frozen.set_value(self._freezer.counted_from)
        said = self.tr("As the shop began with them; nobody has set them yet.")
        if changes:
            at = changes[-1].at.astimezone()
            said = self.tr("Set last by {who}, {day}, {time}.").format(
                who=changes[-1].person,
                day=date_text(at.date(), self._bench.words.language),
                time=f"{at:%H:%M}",
            )
        self.kept.setText(said)

    def _only_asked(self) -> None:
        """What has no effect as things stand can't be typed."""
        self.calls.set_read_only(self.without.value() == "ring")
        self.frozen.set_read_only(self.hours.value() == 0)

    def attempt(self) -> str:
        calls = replace(
            self._calls,
            due_days=self.due.value() or 0,
            counted_from=self.counted.value() or self._calls.counted_from,
            remind_days=self.remind.value() or 0,
            without_answer=self.without.value() or self._calls.without_answer,
            most_calls=self.calls.value() or self._calls.most_calls,
        )
        freezer = replace(
            self._freezer,
            hours=self.hours.value() or 0,
            counted_from=self.frozen.value() or self._freezer.counted_from,
        )
        with self._bench.store.work(self._bench.person, self._bench.station) as work:
            found = (
                work.calls.save_rules(calls) if calls != self._calls else calls,
                work.freezing.save_rules(freezer) if freezer != self._freezer else freezer,
            )
            stale = next((one for one in found if isinstance(one, StaleEdit)), None)
            if stale is not None:
                return self.tr("{who} has changed this meanwhile; open it again.").format(
                    who=stale.by
                )
            work.commit()
        return ""
