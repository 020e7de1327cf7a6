"""The words of an arrival: condition, how the age is known, and the cautions with their rule."""

from PySide6.QtCore import QCoreApplication

from shared.shop.arrival import AgeBy, ArrivalCaution, Condition


def condition_words(condition: Condition) -> str:
    """How it came."""
    return {
        "": "",
        "sound": QCoreApplication.translate("Arrivals", "sound, walks"),
        "lame": QCoreApplication.translate("Arrivals", "lame, walks"),
        "down": QCoreApplication.translate("Arrivals", "can't walk"),
        "dead": QCoreApplication.translate("Arrivals", "dead"),
    }[condition]


def age_by_words(age_by: AgeBy) -> str:
    """By what the age is known."""
    return {
        "": "",
        "teeth": QCoreApplication.translate("Arrivals", "teeth"),
        "papers": QCoreApplication.translate("Arrivals", "papers"),
        "said": QCoreApplication.translate("Arrivals", "owner's word only"),
    }[age_by]


def caution_words(caution: ArrivalCaution) -> str:
    """The caution, worded as ours, with the rule it rests on."""
    return {
        "dead": QCoreApplication.translate(
            "Arrivals", "Dead on arrival: not for food. Tell the inspector (9 CFR 309.3)."
        ),
        "down_inspected": QCoreApplication.translate(
            "Arrivals",
            "It can't walk: the inspector decides, before anything else is done "
            "(9 CFR 309.2 and 309.3).",
        ),
        "down_custom": QCoreApplication.translate(
            "Arrivals",
            "It can't walk. Cattle that can't are not killed for food (9 CFR 309.3); of any other, "
            "ask your inspection office first.",
        ),
        "not_healthy": QCoreApplication.translate(
            "Arrivals", "Not said to be healthy: the inspector, or your office, decides first."
        ),
        "drugs": QCoreApplication.translate(
            "Arrivals",
            "A withdrawal time still runs: it can't be killed for food before it is over "
            "(9 CFR 309.16).",
        ),
        "not_stated": QCoreApplication.translate(
            "Arrivals",
            "Ask for the owner's word: healthy, and no medicine whose withdrawal time still runs.",
        ),
        "age_not_shown": QCoreApplication.translate(
            "Arrivals",
            "Age is read from teeth or papers; the inspector decides. Not shown, it is cut as 30 "
            "months and over: no backbone goes to the owner (9 CFR 310.22).",
        ),
        "feed": QCoreApplication.translate(
            "Arrivals", "Over 24 hours in the pen: it must have feed and water (9 CFR 313.2)."
        ),
    }[caution]
