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
    """The caution, worded as ours; a rule is named only where its number could be looked up.

    The others (`shared.shop.arrival` has their numbers, from memory) defer to the inspector.
    """
    return {
        "dead": QCoreApplication.translate(
            "Arrivals", "Dead on arrival: not for food. Tell the inspector, whose word holds."
        ),
        "down_inspected": QCoreApplication.translate(
            "Arrivals",
            "It can't walk: the inspector decides, before anything else is done.",
        ),
        "down_custom": QCoreApplication.translate(
            "Arrivals",
            "It can't walk. Cattle that can't are not taken for food; of any other, ask your "
            "inspection office before anything is done.",
        ),
        "not_healthy": QCoreApplication.translate(
            "Arrivals", "Not said to be healthy: the inspector, or your office, decides first."
        ),
        "drugs": QCoreApplication.translate(
            "Arrivals",
            "A withdrawal time still runs: not to be killed for food before it is over. The "
            "medicine's label says when, and the inspector's word holds.",
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
            "Arrivals",
            "Over 24 hours in the pen: see that it has feed as well as water; your inspector or "
            "office says what is asked.",
        ),
    }[caution]
