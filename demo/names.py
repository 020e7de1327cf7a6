"""The invented plant and the invented people it works for; nobody here exists."""

from shared.shop.customers import Customer
from shared.shop.details import ShopDetails

PLANT = ShopDetails(
    name="Millrace Hollow Meats",
    address="410 Ferry Lane\nMillrace Hollow, OH 00000",
    phone="(555) 010-0100",
    email="counter@millrace-hollow.example",
)
PERSONS = ("Wilma", "Dashiell", "Ottoline", "Bao")
STATIONS = ("Counter", "Rail", "Block", "Wrap", "Office")

NAMES = (
    "Jørgen & Łucja <O'Neil>",
    "Thistledown Farm",
    "Kestrel Ridge Hogs",
    "Marisol Quesada-Brandt",
    "Amaury Þórsson",
    "Bluebank Pastures",
    "Hollis Banerjee",
    "Ines Calloway",
    "Tomasz Eklund",
    "Fadumo Ostrander",
    "Bram Quillfeather",
    "Yusra Lindgren",
    "Odell Prewitt",
    "Marta Vinterberg",
    "Zoë Aldersgate",
    "The Wednesday Supper Club of Lower Millrace Hollow and Environs",
    "Ngozi Featherstonehaugh",
    "Étienne Dubreuil",
    "Siobhán Ní Mhurchadha",
    "Gus Pell",
    "Anneliese Grünewald-Oyelaran",
    "Ruben Castañeda",
    "Priya Holloway",
    "Desmond Achterberg",
    "Ximena Ybarra",
    "Old Quarry Goats",
    "Sten Håkansson",
    "Lourdes Piñero",
    "Cormac Vale",
    "Beatrix Umber",
    "Ødegaard Sheep Company",
    "Teodora Marchetti",
    "Wendell Ip",
    "Jaromír Šťastný",
    "Clementine Rusk",
    "Abel & Fern Thackeray",
    "Nuala Greaves",
    "Faisal Domínguez",
    "Petra Lowenstein-Achebe",
    "Ivo Saltmarsh",
    "Hettie Crane",
    "Rosamund Ko",
)
ROADS = ("Ferry Lane", "Orchard Road", "Quarry Hill", "Mill Street", "Long Meadow Road")
SPANISH = {"Marisol Quesada-Brandt", "Ruben Castañeda", "Lourdes Piñero", "Faisal Domínguez"}


def customers() -> tuple[Customer, ...]:
    """Everyone, each with a phone and an address of his own."""
    return tuple(
        Customer(
            name=name,
            phone=f"(555) 010-{101 + place:04}",
            email=f"customer{place + 1}@mail.example",
            address=f"{12 + 7 * place} {ROADS[place % len(ROADS)]}\nMillrace Hollow, OH 00000",
            language="es" if name in SPANISH else "en",
        )
        for place, name in enumerate(NAMES)
    )
