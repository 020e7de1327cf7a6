"""Credit notes: how a mistake on an issued bill is mended; the bill itself never changes."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from shared.billing.bill import Bill, BillLine
from shared.billing.canonical import read_text, text_of
from shared.billing.problems import BillingProblem
from shared.money import money_text, round_half_up

VERSION = 1


@dataclass(frozen=True, slots=True)
class CreditLine:
    """What is given back of one bill line and of its tax, positive cents."""

    key: str
    code: str
    name: str
    tag: str
    amount_cents: int
    tax_cents: int
    reason: str = ""


@dataclass(frozen=True, slots=True)
class CreditNote:
    """What is given back of a bill, and why. Its own number is the store's."""

    bill_number: int
    species: str
    owner: str
    share: int
    reason: str
    lines: tuple[CreditLine, ...]

    @property
    def total_cents(self) -> int:
        """All of it with its tax; above nothing."""
        return sum(line.amount_cents + line.tax_cents for line in self.lines)


def credit_note(
    bill: Bill,
    bill_number: int,
    reason: str,
    *,
    keys: Collection[str] | None = None,
    cents: Mapping[str, int] | None = None,
    earlier: Sequence[CreditNote] = (),
) -> CreditNote | BillingProblem:
    """Give back whole lines (`keys`; None with no `cents` is all of them) or parts (`cents`).

    `earlier` are the bill's credit notes so far; nothing is given back twice. Problems:
    "reason_missing", "no_such_line", "not_positive", "more_than_billed", "nothing_to_credit".
    """
    if not reason.strip():
        return BillingProblem("reason_missing")
    parts = dict(cents or {})
    wanted = [line.key for line in bill.lines] if keys is None and not parts else [*(keys or ())]
    for key in [*wanted, *parts]:
        if bill.line(key) is None:
            return BillingProblem("no_such_line", {"line": key})
    lines: list[CreditLine] = []
    for line in bill.lines:
        if line.key not in wanted and line.key not in parts:
            continue
        one = _credit(line, parts.get(line.key), earlier)
        if isinstance(one, BillingProblem):
            return one
        if one.amount_cents or one.tax_cents:
            lines.append(one)
    note = CreditNote(
        bill_number, bill.species, bill.owner, bill.share, reason.strip(), tuple(lines)
    )
    return note if note.total_cents > 0 else BillingProblem("nothing_to_credit")


def credit_text(note: CreditNote) -> str:
    """The credit note as canonical JSON, kept beside its paper."""
    return text_of(note, "credit_note", VERSION)


def credit_from_text(text: str) -> CreditNote | BillingProblem:
    """The credit note kept in a text, or "damaged" (with the place) or "too_new"."""
    return read_text(text, "credit_note", VERSION, CreditNote)


def _credit(
    line: BillLine, cents: int | None, earlier: Sequence[CreditNote]
) -> CreditLine | BillingProblem:
    """A line's credit: what is left of it, or so many cents and their part of the tax."""
    given = [one for note in earlier for one in note.lines if one.key == line.key]
    left = line.amount_cents - sum(one.amount_cents for one in given)
    tax_left = line.tax_cents - sum(one.tax_cents for one in given)
    amount, tax = left, tax_left
    if cents is not None:
        if cents <= 0:
            return BillingProblem("not_positive", {"line": line.key})
        if cents > left:
            data = {"line": line.key, "left": money_text(left), "asked": money_text(cents)}
            return BillingProblem("more_than_billed", data)
        amount = cents
        tax = tax_left if cents == left else min(tax_left, round_half_up(cents * line.tax_rate))
    return CreditLine(line.key, line.code, line.name, line.tag, amount, tax, line.reason)
