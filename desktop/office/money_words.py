"""Why a bill can't be made or money taken, in sentences; and what a bill's line is called."""

from collections import defaultdict
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

if TYPE_CHECKING:
    from printing.words import Words
    from shared.billing.bill import BillLine
    from shared.billing.problems import BillingProblem
    from shared.shop.problems import NotClosed, Refused


def charge_words(code: str, words: "Words", name: str = "") -> str:
    """What a charge is called: the shop's own words, else the catalogue's."""
    key = f"charge.{code}"
    return name or (words.say(key) if words.has(key) else code)


def line_words(line: "BillLine", words: "Words") -> str:
    """What a line of a bill is for, with its tag and what is particular about it."""
    if line.kind == "credit":
        return f"{words.say('bills.credit')}: {line.reason}"
    parts = [charge_words(line.code, words, line.name)]
    if line.tag:
        parts.append(words.say("bills.tag", tags=line.tag))
    if line.kind == "waiting":
        parts.append(words.say(f"bills.waits_{line.waits_for or 'packages'}"))
        if line.waits_for == "not_weighed":
            parts.append(
                QCoreApplication.translate("Bill", "Shift+F12 at the wrap weighs it together")
            )
    elif line.rule in ("minimum", "steps", "kept"):
        parts.append(words.say(f"bills.rule_{line.rule}"))
    if line.by_table:
        parts.append(words.say("bills.line_by_table"))
    return ", ".join(parts)


def basis_words(line: "BillLine", words: "Words") -> str:
    """What a line is charged by."""
    return "" if line.kind == "credit" else words.say(f"bills.basis_{line.basis}")


def complaint(problem: "BillingProblem | Refused") -> str:
    """Why it can't be done, and what would work."""
    said = _of_money(problem.code) or _of_the_lot(problem.code)
    return said.format_map(defaultdict(str, problem.data, code=problem.code))


def not_closed(refused: "NotClosed") -> str:
    """Why an order can't be closed yet."""
    translate = QCoreApplication.translate
    said = {
        "not_handed_over": translate("BillsPage", "The goods are not handed over yet."),
        "not_billed": translate("BillsPage", "The order is not billed yet."),
        "balance": translate("BillsPage", "The balance is not nothing yet."),
    }
    return " ".join(said.get(code, code) for code in refused.codes)


def _of_money(code: str) -> str:
    """Sentences about amounts, bills and credits; "" for any other code."""
    translate, said = QCoreApplication.translate, ""
    match code:
        case "overpaid":
            said = translate("Bill", "{due} is due; {tendered} is more. Only cash can give change.")
        case "nothing_due":
            said = translate(
                "Bill", "Nothing is due; take it as a deposit, or bill the order first."
            )
        case "more_than_owed":
            said = translate("Bill", "{owed} is owed to the customer; {asked} is more.")
        case "more_than_due":
            said = translate("Bill", "{due} is due; {asked} is more.")
        case "not_positive":
            said = translate("Bill", "Say an amount above nothing.")
        case "reason_missing":
            said = translate("Bill", "Say why.")
        case "already_billed":
            said = translate(
                "Bill", "Some of these lines are on an earlier bill; read the order again."
            )
        case "nothing_to_credit":
            said = translate("Bill", "There is nothing left on that bill to credit.")
        case "more_than_billed":
            said = translate("Bill", "That is more than the line was billed.")
        case "changed":
            said = translate(
                "Bill", "It no longer comes to what was checked; read the bills again."
            )
        case "period_closed":
            said = translate("Bill", "The day lies in a period that is closed; see Books.")
        case "not_yet":
            said = translate("Bill", "That day is still to come; money is dated the day it came.")
        case "no_such_line":
            said = translate("Bill", "Choose the line the amount is of.")
        case _:
            pass
    return said


def _of_the_lot(code: str) -> str:
    """Sentences about weights, shares and rate cards."""
    translate = QCoreApplication.translate
    match code:
        case "extras_changed":
            said = translate(
                "Bill", "What is also on this bill was changed meanwhile; read the order again."
            )
        case "no_card":
            said = translate(
                "Bill", "No rate card holds for this lot; add one under Rates (Alt+3)."
            )
        case "weight_missing":
            said = translate("Bill", "An animal has no hanging weight yet; weigh it at the Rail.")
        case "quarters_differ":
            said = translate(
                "Bill", "The quarters of a side don't agree with the side; see the Rail."
            )
        case "shares_over":
            said = translate(
                "Bill", "A part of an animal is held by two shares; mend it at the Counter."
            )
        case "producer_card_lacks":
            said = translate("Bill", "A charge falls to the producer, whose rate card lacks it.")
        case "fore_share_absurd":
            said = translate("Bill", "The shop's fore share is not between 0 and 100 %; see Shop.")
        case "rate_absurd":
            said = translate("Bill", "{rate} is more than any rate here.")
        case "rate_negative" | "minimum_negative":
            said = translate("Bill", "A rate can't be below nothing.")
        case _:
            said = translate("Bill", "It can't be billed: {code}.")
    return said
