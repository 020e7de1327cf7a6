"""What an owner was told his share weighs the evening of the kill."""

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

ToldHow = Literal["mail", "paper", "spoken"]


@dataclass(frozen=True, slots=True)
class WeightTold:
    """One telling: how, the weight that was told (None: that it isn't weighed), who and when."""

    order_id: int
    how: ToldHow
    hanging_ng: int | None
    at: datetime
    person: str
    note: str = ""
