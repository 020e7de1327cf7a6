"""The field for a customer: found by any part of the name, or written anew with a phone."""

import re
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QEvent, QModelIndex, QObject, QPoint, QStringListModel, Qt, QTimer
from PySide6.QtGui import QKeyEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QAbstractItemView, QApplication, QComboBox, QCompleter, QWidget

from desktop.counter.customer_names import (
    MOST,
    Hit,
    Names,
    customer_words,
    find_customers,
    read_names,
)
from desktop.fields import ChoiceField
from desktop.look.space import GROUP
from shared.shop.customers import Customer, name_key, phone_digits

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from db.unit_of_work import Work
    from desktop.bench import Bench
    from desktop.messages import Messages
    from shared.shop.lists import CustomerRow

LEAST_LETTERS = 16
WAIT_MS = 60
MOST_WIDE = 640  # the list below the line
NEW = 0  # who is not in the store yet; the store's ids begin at 1
_PHONE = re.compile(r"[\s,;]*(\+?[0-9(][0-9() .+-]{5,})\s*$")
_CORNER = QPoint()
_WORDS = Qt.ItemDataRole.UserRole + 1
_ID = Qt.ItemDataRole.UserRole + 2


def split_phone(text: str) -> tuple[str, str]:
    """A name and the phone written behind it: "Ole Berg 555 010 0199"."""
    found = _PHONE.search(text)
    if found is None:
        return text.strip(), ""
    return text[: found.start()].strip(" ,;"), found.group(1).strip()


class CustomerField(ChoiceField[int]):
    """Takes a customer's id; other words are a new customer, added by `settle`.

    The arrow opens the first names. What is typed is looked for among them at once and a moment
    later in the whole store, any part of name or phone, names written nearly so at the end.
    """

    def __init__(self, parent: QWidget | None = None, *, required: bool = False) -> None:
        super().__init__(parent, required=required, free=True)
        # As wide as its place: else every name of the shop is measured before it is shown.
        self.box.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.box.setMinimumContentsLength(LEAST_LETTERS)
        self._bench: Bench | None = None
        self._names = Names()
        self._found: dict[str, Hit] = {}  # by what is looked for in their words
        self._taken: Hit | None = None
        self._below: QStandardItemModel | None = None
        self._below_is_of = ""
        self._peers: Sequence[CustomerField] = ()
        self._soon = QTimer(self, singleShot=True, interval=WAIT_MS)
        self._soon.timeout.connect(self._search)
        self.line.textEdited.connect(self._typed)
        self.box.installEventFilter(self)  # it has the keyboard, and hands its line what it leaves

    def offer(self, bench: "Bench", there: "Sequence[Hit]" = ()) -> None:
        """Search this shop's customers; who is `there` can be shown before any search."""
        self._bench = bench
        self._remember(there)

    def offer_names(self, names: Names, words: QStringListModel) -> None:
        """What the arrow opens, as several fields share it."""
        at = self.line.cursorPosition()
        self._names = names
        self.share_choices(names.ids, words)
        self.line.setCursorPosition(at)

    def offer_new_of(self, peers: "Sequence[CustomerField]") -> None:
        """Offer who was newly written in other fields of the form: the producer as an owner."""
        self._peers = [one for one in peers if one is not self]

    def hits(self) -> tuple[str, ...]:
        """What is offered below the field for what is typed."""
        below = self._below
        return (
            () if below is None else tuple(below.item(at).text() for at in range(below.rowCount()))
        )

    def value(self) -> int | None:
        typed = name_key(self.text())
        if self._taken is not None and name_key(self._taken.words) == typed:
            return self._taken.id
        at = self._at()
        if at is not None:
            return self._names.ids[at]
        found = self._found.get(typed)
        return None if found is None else found.id

    def set_value(self, value: int | None) -> None:
        if value is not None and value not in self._names.ids and self._bench is not None:
            self._remember(_read(self._bench, [value]))
        there = next((one for one in self._found.values() if one.id == value), None)
        super().set_value(value if there is None else None)
        self._taken = there
        if there is not None:
            self.set_text(there.words)
            self.line.setCursorPosition(0)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Down and up go into the list of what was typed, never to a name it has nothing of."""
        if (
            watched in (self.line, self.box)
            and isinstance(event, QKeyEvent)
            and event.type() is QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up)
            and self.text().strip()
            and self.value() is None
        ):
            return self._into_list(event)
        return super().eventFilter(watched, event)

    def _open_list(self) -> None:
        if self.line.hasFocus() and self.hits():
            self._completer.complete()

    def _into_list(self, event: QKeyEvent) -> bool:
        """Open the list and hand it the key; what is still to be searched is searched first."""
        typed = self.line.text()
        if self._soon.isActive() or typed != self._below_is_of:
            self._soon.stop()
            self._put_below(self._first_hits(typed))
            if self._bench is not None:
                self._show_found(typed, find_customers(self._bench.store, typed))
        if self.hits():
            self._completer.complete()
            QApplication.sendEvent(cast("QWidget", self._completer.popup()), event)
        return True

    def known(self, work: "Work", messages: "Messages") -> bool:
        """Whether it can be taken: a new name that looks known is asked about first."""
        if self.is_empty() or self.value() is not None:
            return True
        name, phone = split_phone(self.text())
        if not name:
            self.complain(self.tr("Write the name before the phone."))
            return False
        alike = work.customers.alike(name, phone) or work.customers.nearly(name)
        offered = [Hit(row.id, customer_words(row.name, row.phone)) for row in alike]
        self._remember(offered)
        if not alike or self.value() is not None:
            return True
        text = self._known_already(alike, name, phone_digits(phone))
        add = self.tr("Add {name} as another").format(name=name)
        if messages.ask(self.tr("Known already?"), text, add, self.tr("Go back and choose")):
            return True
        self.complain(text)
        self._put_below(offered)
        QTimer.singleShot(WAIT_MS, self, self._open_list)  # the question gives the keyboard back
        return False

    def _known_already(self, alike: "Sequence[CustomerRow]", name: str, digits: str) -> str:
        there = ", ".join(f"{row.name} {row.phone}".strip() for row in alike[:3])
        if any(digits and phone_digits(row.phone) == digits for row in alike):
            text = self.tr("{known} is known already, with the same phone.")
        elif all(name_key(row.name) != name_key(name) for row in alike):
            text = self.tr("{known} is known already, written nearly the same.")
        else:
            text = self.tr("{known} is known already, with the same name.")
        return text.format(known=there)

    def settle(self, work: "Work", added: dict[str, int]) -> int | None:
        """The customer's id, a new one added; None leaves it open.

        `added` holds who was added in this unit by what was typed, and by the name alone, so that
        one typed twice is one, the second time without the phone.
        A new one's papers are in the window's language until his entry says otherwise.
        """
        if self.is_empty() or self.value() is not None:
            return self.value()
        typed = name_key(self.text())
        if typed not in added:
            name, phone = split_phone(self.text())
            spoken = "en" if self._bench is None else self._bench.words.language
            made = work.customers.add(Customer(name=name, phone=phone, language=spoken))
            if not isinstance(made, Customer):
                self.complain(self.tr("Write a name here."))
                return None
            added.setdefault(name_key(name), made.id)
            added[typed] = made.id
        return added[typed]

    def _at(self) -> int | None:
        """Which of the first names the words are; of two written alike the one chosen."""
        typed, current = name_key(self.text()), self.box.currentIndex()
        if 0 <= current < len(self._names.keys) and self._names.keys[current] == typed:
            return current
        return self._names.at.get(typed)

    def _finished(self) -> None:
        super()._finished()
        if not self.line.hasFocus():
            self.line.setCursorPosition(0)  # a long name is shown from its beginning

    def _narrow(self, typed: str) -> None:
        """Nothing: what is below this line is put there by `_typed`, from the whole store."""

    def _typed(self, text: str) -> None:
        self._taken = None
        self._put_below(self._first_hits(text) if text.strip() else [])
        if text.strip() and self._bench is not None:
            self._soon.start()
        else:
            self._soon.stop()

    def _first_hits(self, typed: str) -> list[Hit]:
        """Who is new in this form, then the first names; once each."""
        parts = name_key(typed).split()
        new = {
            name_key(one.text()): one.text().strip()
            for one in self._peers
            if one.isEnabled() and not one.is_empty() and one.value() is None
        }
        fits = [
            Hit(NEW, words)
            for key, words in new.items()
            if key != name_key(typed) and all(part in key for part in parts)
        ]
        return [*fits, *self._names.hits(typed)]

    def _search(self) -> None:
        bench, typed = self._bench, self.line.text()
        if bench is None or not typed.strip():
            return
        bench.work.run(
            *(find_customers, bench.store, typed),
            then=lambda found: self._show_found(typed, found),
            key=f"customers.{id(self)}",
            owner=self,
        )

    def _show_found(self, typed: str, found: "Sequence[Hit]") -> None:
        """Those of the whole store come behind the first names; none for what is over."""
        if typed != self.line.text():
            return
        first = self._first_hits(typed)
        ids = {one.id for one in first}
        more = [one for one in found if one.id not in ids]
        if not more:
            return
        self._remember(more)
        self._put_below([*first, *more])
        self._open_list()

    def _remember(self, hits: "Iterable[Hit]") -> None:
        self._found |= {name_key(one.words): one for one in hits}

    def _list_below(self) -> None:
        """The list of what is found, made when something is first typed: most never have one."""
        if self._below is not None:
            return
        self._below = QStandardItemModel(self)
        self._completer = QCompleter(self._below, self)
        self._completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self._completer.setCompletionRole(_WORDS)
        self._completer.setMaxVisibleItems(14)
        self._completer.activated[QModelIndex].connect(self._take)  # pyright: ignore[reportIndexIssue]
        self.line.setCompleter(self._completer)

    def _put_below(self, hits: "Sequence[Hit]") -> None:
        self._list_below()
        assert self._below is not None
        self._below_is_of = self.line.text()
        self._below.clear()
        for one in hits:
            shown = one.words
            if one.near:
                shown = self.tr("{name}, written nearly so").format(name=one.words)
            item = QStandardItem(shown)
            item.setData(one.words, _WORDS)
            item.setData(one.id, _ID)
            self._below.appendRow(item)
        below = self._completer.popup()
        if isinstance(below, QAbstractItemView):  # names and phones are longer than a share's line
            wide = below.sizeHintForColumn(0) + 2 * GROUP
            room = self.screen().availableGeometry().right() - self.line.mapToGlobal(_CORNER).x()
            below.setMinimumWidth(max(self.line.width(), min(wide, room, MOST_WIDE)))

    def _take(self, index: QModelIndex) -> None:
        self._soon.stop()
        taken = Hit(index.data(_ID), index.data(_WORDS))
        self._taken = None if taken.id == NEW else taken
        self._remember([] if self._taken is None else [taken])
        self.line.setText(taken.words)
        self._changed()
        self._left()


def offer_customers(
    bench: "Bench", fields: "Sequence[CustomerField]", there: "Iterable[int | None]" = ()
) -> None:
    """Offer the shop's customers in each of the fields; who is `there` is among them at once.

    The first names are read on a worker and shared by the fields.
    """
    known = [one for one in there if one is not None]
    hits = _read(bench, known) if known else []
    for field in fields:
        field.offer(bench, hits)

    def put(names: Names) -> None:
        words = QStringListModel(list(names.words))
        for field in fields:
            field.offer_names(names, words)

    bench.work.run(read_names, bench.store, MOST, then=put, owner=fields[0])


def _read(bench: "Bench", ids: "Sequence[int]") -> list[Hit]:
    with bench.store.read() as work:
        rows = work.customers.names(0, ids)
    return [Hit(row[0], customer_words(row[1], row[2])) for row in rows]
