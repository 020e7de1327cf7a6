"""Two owners of one hog, planned: the worked order file of the demo."""

from pathlib import Path

from shared.carcass.anatomy import catalogue
from shared.cutting.answer import Answer
from shared.cutting.order import Question
from shared.cutting.plan import plan
from shared.orderfile import OrderFile, read

FILE = Path(__file__).parents[3] / "demo" / "orders" / "pork.json"
PORK = catalogue("pork")


def planned() -> tuple[Question, Answer]:
    """The question of the file and the plan's answer to it."""
    found = read(FILE.read_text(encoding="utf-8"))
    assert isinstance(found, OrderFile)
    return found.question, plan(found.question, PORK)
