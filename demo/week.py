"""The invented plant's week: what each kill day takes, and its cooler and block."""

from shared.shop.calendar import Plan

WEEK = Plan(
    week={
        0: {"pork": 12, "beef": 3},
        1: {"beef": 5, "lamb": 6, "goat": 6},
        3: {"pork": 12, "beef": 3, "deer": 8},
    },
    hooks=90,
)
