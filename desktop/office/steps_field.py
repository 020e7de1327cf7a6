"""The field for the steps of a rate: "5: $5; 10: $7.50" is $5 above five and $7.50 above ten."""

from desktop.fields.line import LineField
from shared.billing.rates import Step
from shared.money import rate_text, read_rate
from shared.reading import Unread, read_number


class StepsField(LineField[tuple[Step, ...]]):
    """Takes steps, parted by semicolons; each is how much it lies above, and the rate there."""

    def _read(self, text: str) -> tuple[Step, ...] | Unread:
        found: list[Step] = []
        for part in text.split(";"):
            if not part.strip():
                continue
            above, colon, rate = part.partition(":")
            limit, each = read_number(above.strip()), read_rate(rate.strip())
            if not colon or isinstance(limit, Unread) or isinstance(each, Unread):
                return Unread("not_a_number", part)
            if found and limit.value <= found[-1].above:
                return Unread("not_exact", part)
            found.append(Step(limit.value, each))
        return tuple(found)

    def _write(self, value: tuple[Step, ...]) -> str:
        return "; ".join(f"{_number(step)}: {rate_text(step.rate)}" for step in value)

    def _complaint(self, unread: Unread) -> str:
        words = self.tr(
            "Steps are written 5: $5; 10: $7.50, each above the one before; it can't read “{text}”."
        )
        return words.format(text=unread.text.strip())


def _number(step: Step) -> str:
    above = step.above
    return str(above.numerator) if above.denominator == 1 else f"{float(above):g}"
