"""The planner's answer in the trade's words, for reading in a shell."""

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from shared.cutting.breaking import BlockLine, PoolLine, block_lines, pool_lines
from shared.cutting.owners_questions import put_together
from shared.units import length_text, pounds_text

if TYPE_CHECKING:
    from printing.words import Words
    from shared.carcass.catalogue import Catalogue
    from shared.cutting.answer import Answer, Remedy
    from shared.cutting.order import Question
    from shared.orderfile import OrderFile


def as_text(
    order: "OrderFile",
    catalogue: "Catalogue",
    answer: "Answer",
    remedies: "Sequence[Sequence[Remedy]]",
    words: "Words",
) -> str:
    """The verdict, what is wrong and what would work, then the plan by carcass and side."""
    lines = [words.say(f"plan.{answer.verdict}")]
    lines += _matters(order, catalogue, answer, remedies, words)
    planned = list(_planned(order.question, catalogue, answer, words))
    if planned and answer.verdict == "cant":
        lines += ["", words.say("plan.stands")]
    return "\n".join(lines + planned).replace("\u00a0", " ")


def _matters(
    order: "OrderFile",
    catalogue: "Catalogue",
    answer: "Answer",
    remedies: "Sequence[Sequence[Remedy]]",
    words: "Words",
) -> Iterator[str]:
    """Conflicts, each with its remedies, then what to ask the owners, then cautions."""
    if not (answer.conflicts or answer.questions or answer.cautions):
        return
    from printing.words import sentences

    question = order.question
    for conflict, offered in zip(answer.conflicts, remedies, strict=True):
        yield "- " + sentences.conflict(conflict, question, catalogue, words)
        if offered:
            yield "  " + words.say("plan.remedy")
        for remedy in offered:
            yield "  * " + sentences.remedy(remedy, question, catalogue, words)
    for asked in put_together(answer.questions):
        yield "? " + sentences.owners_question(asked, question, catalogue, words)
    for caution in answer.cautions:
        yield "! " + sentences.caution(caution, question, catalogue, words)


def _planned(
    question: "Question", catalogue: "Catalogue", answer: "Answer", words: "Words"
) -> Iterator[str]:
    owners = {share.number: share.owner for share in question.shares}
    place: tuple[int, int] | None = None
    for line in block_lines(question, answer, catalogue):
        if (line.carcass, line.side) != place:
            place = (line.carcass, line.side)
            yield ""
            yield _place(question, line, words)
        yield f"  {_made(line, catalogue.species, words):<52} {owners[line.share]}"
    pools = pool_lines(question, answer, catalogue)
    if pools:
        yield ""
        yield words.say("plan.pools")
    for pool in pools:
        yield f"  {_pooled(pool, catalogue.species, words):<52} {owners[pool.share]}"


def _place(question: "Question", line: BlockLine, words: "Words") -> str:
    tag = question.carcasses[line.carcass].tag
    number = line.carcass + 1
    animal = (
        words.say("plan.tag", number=number, tag=tag)
        if tag
        else words.say("plan.animal", number=number)
    )
    if line.side == 0:
        return f"{animal}, {words.say('plan.both')}"
    return f"{animal}, {words.say('plan.side', side=line.side)}"


def _made(line: BlockLine, species: str, words: "Words") -> str:
    count = line.count or 1
    name = words.name(species, f"cut.{line.cut}", count)
    parts = [f"{line.count} {name}" if line.count else name]
    if line.thickness is not None:
        parts.append(length_text(line.thickness))
    parts += [words.name(species, f"finish.{finish}") for finish in line.finishes]
    if line.from_rest:
        parts.append(words.say("plan.rest"))
    parts.append(words.say("plan.expected", pounds=pounds_text(line.weight_ng)))
    return ", ".join(parts)


def _pooled(line: PoolLine, species: str, words: "Words") -> str:
    parts = [words.name(species, f"cut.{line.cut}")]
    if line.lean is not None:
        parts.append(f"{line.lean} %")
    parts += [words.name(species, f"finish.{finish}") for finish in line.finishes]
    parts.append(words.say("plan.expected", pounds=pounds_text(line.weight_ng)))
    return ", ".join(parts)
