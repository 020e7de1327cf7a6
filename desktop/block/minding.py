"""What the block reads before the knife: age, losses, what no longer stands, owners' notes."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from printing.words import sentences
from printing.words.kept_back import kept_back
from printing.words.place_words import capital
from shared.carcass import thirty_months
from shared.units import weight_text

if TYPE_CHECKING:
    from desktop.block.cutting import Cutting
    from printing.words import Words

WITH_ALLERGENS = ("seasoned", "marinated", "stuffed")


def cautions(cutting: "Cutting", words: "Words") -> list[str]:
    """Cautions in the order they matter, each a sentence or two."""
    animal, said = cutting.animal, list[str]()
    if thirty_months.backbone_kept_back(animal.species, animal.age):
        over = animal.age == "30_and_over"
        said.append(
            (
                QCoreApplication.translate("BlockCautions", "30 months and over.")
                if over
                else QCoreApplication.translate(
                    "BlockCautions", "Age not known: cut as 30 months and over."
                )
            )
            + " "
            + _backbone(custom=animal.regime == "custom")
        )
    said += [_lost(cutting, at, words) for at in range(len(cutting.losses))]
    said += [
        QCoreApplication.translate(
            "BlockCautions", "Not released: {owner}. Leave that part whole."
        ).format(owner=owner)
        for owner in cutting.unreleased
    ]
    said += [
        QCoreApplication.translate(
            "BlockCautions",
            "{owner} has changed the order since sheet {number}; ask the counter first.",
        ).format(owner=owner, number=cutting.sheet.number if cutting.sheet else 0)
        for owner in cutting.changed
    ]
    found = said + _allergens(cutting, words) + _planned(cutting, words)
    return list(dict.fromkeys(found))


def _backbone(*, custom: bool) -> str:
    """Where it goes, and whom to ask: no inspector stands by custom-exempt work."""
    if custom:
        return QCoreApplication.translate(
            "BlockCautions",
            "No backbone goes to the owner; in doubt ask your state or FSIS contact.",
        )
    return QCoreApplication.translate(
        "BlockCautions", "No backbone goes to the owner; the inspector decides."
    )


def _allergens(cutting: "Cutting", words: "Words") -> list[str]:
    """Seasoned, marinated and stuffed lines of this carcass, with what their recipe holds."""
    species, shares = cutting.animal.species, {one.share for one in cutting.orders}
    said: list[str] = []
    for choice in cutting.question.choices:
        told = [one for one in choice.finishes if one in WITH_ALLERGENS]
        if choice.share not in shares or not (told or choice.seasoning):
            continue
        names = [words.name(species, f"finish.{one}") for one in told]
        names += [choice.seasoning.replace("_", " ")] if choice.seasoning else []
        what = ", ".join([words.name(species, f"cut.{choice.cut}", 2), *names])
        known = dict.fromkeys(it for one in told for it in cutting.allergens.get(one, ()))
        key = "block.contains" if known else "papers.allergens"
        owner = cutting.owner(choice.share)
        said.append(capital(words.say(key, what=what, owner=owner, allergens=", ".join(known))))
    return said


def _planned(cutting: "Cutting", words: "Words") -> list[str]:
    """What the plan refuses or minds by now."""
    said: list[str] = []
    question, catalogue = cutting.question, cutting.catalogue
    stands = QCoreApplication.translate("BlockCautions", "No longer stands: {what}")
    found = [
        sentences.conflict(one, question, catalogue, words)
        for one in cutting.answer.conflicts
        if one.kind != "srm"
    ]
    by_age = kept_back(cutting.answer.conflicts, question, catalogue, words)
    said += [stands.format(what=what) for what in ([by_age] if by_age else []) + found]
    for each in cutting.answer.cautions:
        if each.code not in ("age_unknown", "trimmed", "lost_part"):
            said.append(sentences.caution(each, question, catalogue, words))
    return said


def notes(cutting: "Cutting") -> list[str]:
    """The owners' notes in full, and how packages are marked."""
    marked = [
        QCoreApplication.translate("BlockCautions", "Custom: every package is marked NOT FOR SALE.")
    ]
    return (marked if cutting.animal.regime == "custom" else []) + [
        QCoreApplication.translate("BlockCautions", "{owner}: {note}").format(
            owner=one.owner, note=one.note
        )
        for one in cutting.orders
        if one.note
    ]


def _lost(cutting: "Cutting", at: int, words: "Words") -> str:
    gone = cutting.losses[at].gone
    part = words.name(cutting.animal.species, f"part.{gone.part}")
    side = (
        QCoreApplication.translate("BlockCautions", "side {side}").format(side=gone.side)
        if gone.side
        else ""
    )
    much = (
        weight_text(gone.weight)
        if gone.weight is not None
        else QCoreApplication.translate("BlockCautions", "all of it")
    )
    what = ", ".join(each for each in (part, side, much) if each)
    return QCoreApplication.translate("BlockCautions", "Gone: {what}. {reason}").format(
        what=what, reason=capital(gone.reason)
    )
