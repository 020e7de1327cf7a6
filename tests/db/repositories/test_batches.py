"""Recipes and batches in the store."""

from datetime import date
from fractions import Fraction
from pathlib import Path

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

from db import migrate
from db.engine import file_engine
from db.store import open_store
from db.unit_of_work import Work
from shared.curing.batch import Batch
from shared.curing.nitrite import nitrite
from shared.curing.recipe import Ingredient, Recipe, allergens
from shared.shop.arrival import DeerIntake
from shared.shop.orders import Order
from shared.shop.problems import Refused, StaleEdit
from shared.units import Weight
from tests.db.examples import arrived, lot_of_halves, lot_of_one, order_of

BACON = Recipe(
    name="House bacon",
    finish="cured_smoked",
    ingredients=(Ingredient("salt", Fraction(2)), Ingredient("sugar", Fraction(1))),
    allergens_known=True,
    product="dry_cured",
    strength=Fraction(1, 16),
    ready="cook_before_eating",
)


def recipe(work: Work) -> Recipe:
    made = work.recipes.save(BACON)
    assert isinstance(made, Recipe)
    return made


def batch(made: object) -> Batch:
    assert isinstance(made, Batch), made
    return made


def pounds(of: str) -> Weight:
    return Weight.from_pounds(of)


def halves(work: Work) -> tuple[Order, Order]:
    lot = lot_of_halves(work)
    return order_of(work, lot, 1), order_of(work, lot, 2)


def test_a_recipe_comes_back_as_it_was_and_a_changed_one_is_another(work: Work) -> None:
    first = recipe(work)
    assert work.recipes.all() == (first,)
    second = work.recipes.save(
        Recipe(first.id, "House bacon", "cured_smoked", "", "en", first.ingredients)
    )
    assert isinstance(second, Recipe)
    assert work.recipes.all() == (second,)
    assert [one.retired for one in work.recipes.all(retired=True)] == [True, False]


def test_a_recipe_without_a_name_is_refused(work: Work) -> None:
    assert work.recipes.save(Recipe()) == ("name_missing", "no_ingredients")
    assert work.recipes.all() == ()


def test_co_owners_of_one_hog_share_a_batch_and_what_comes_out(work: Work) -> None:
    anna, bert = halves(work)
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, anna.id, 1, "belly", pounds("30"), 2))
    made = batch(work.batches.put_in(made.id, bert.id, 2, "belly", pounds("20"), 2))
    assert [one.owner for one in made.standing] == ["Anna Berg", "Bert Iversen"]
    made = batch(work.batches.move(made, "curing"))
    made = batch(work.batches.move(made, "smoking"))
    made = batch(work.batches.move(made, "done", out=pounds("44.01")))
    assert work.batches.shares(made) == {anna.id: pounds("26.41"), bert.id: pounds("17.60")}
    assert made.yielded == Fraction(4401, 5000)
    assert [one.state for one in made.stages] == ["gathering", "curing", "smoking", "done"]
    assert [one.id for one in work.batches.of_order(bert.id)] == [made.id]


def test_another_family_s_hog_is_refused_with_its_reason(work: Work) -> None:
    anna, _bert = halves(work)
    third = order_of(work, lot_of_one(work, "Cora Dahl", date(2026, 3, 9)))
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, anna.id, 1, "belly", pounds("30")))
    barred = work.batches.put_in(made.id, third.id, 1, "belly", pounds("10"))
    assert barred == Refused("others_meat", {"batch": "1"})
    # Taken out again, the batch is the other family's.
    [meat] = batch(work.batches.get(made.id)).standing
    batch(work.batches.take_out(meat.id, "wrong rack"))
    batch(work.batches.put_in(made.id, third.id, 1, "belly", pounds("10")))


def hunters_deer(work: Work, name: str, day: date, intake: DeerIntake) -> Order:
    lot = lot_of_one(work, name, day, "deer")
    work.arrivals.write_deer(arrived(work, lot, name).id, intake)
    return order_of(work, lot)


def test_two_hunters_deer_share_a_batch_when_both_agreed_in_writing(work: Work) -> None:
    signed = DeerIntake("Hal", meat="batch", signed_by="Hal")
    first = hunters_deer(work, "Hal Moss", date(2026, 11, 21), signed)
    second = hunters_deer(work, "Ina Lund", date(2026, 11, 22), signed)
    third = hunters_deer(work, "Jo Reed", date(2026, 11, 23), DeerIntake("Jo", meat="apart"))
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, first.id, 1, "jerky", pounds("10")))
    both = batch(work.batches.put_in(made.id, second.id, 1, "jerky", pounds("15")))
    assert [one.agreed for one in both.standing] == [True, True]
    barred = work.batches.put_in(made.id, third.id, 1, "jerky", pounds("5"))
    assert barred == Refused("others_meat", {"batch": "1"})


def test_the_last_word_of_a_hunter_counts(work: Work) -> None:
    signed = DeerIntake("Hal", meat="batch", signed_by="Hal")
    first = hunters_deer(work, "Hal Moss", date(2026, 11, 21), signed)
    second = hunters_deer(work, "Ina Lund", date(2026, 11, 22), signed)
    [animal] = work.lots.get(second.lot_id).animals  # pyright: ignore[reportOptionalMemberAccess]
    work.arrivals.write_deer(animal.id, DeerIntake("Ina", meat="apart"))
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, first.id, 1, "jerky", pounds("10")))
    barred = work.batches.put_in(made.id, second.id, 1, "jerky", pounds("15"))
    assert barred == Refused("others_meat", {"batch": "1"})


def test_a_joined_customer_is_one_owner(work: Work) -> None:
    first = order_of(work, lot_of_one(work, "Cora Dahl"))
    second = order_of(work, lot_of_one(work, "Cora Dal", date(2026, 3, 10)))
    assert first.customer_id is not None
    assert second.customer_id is not None
    work.customers.join(second.customer_id, first.customer_id)
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, first.id, 1, "belly", pounds("30")))
    batch(work.batches.put_in(made.id, second.id, 1, "belly", pounds("10")))


def test_the_nitrite_is_checked_from_what_is_known(work: Work) -> None:
    anna, _bert = halves(work)
    made = work.batches.begin(recipe(work).id)
    made = batch(work.batches.put_in(made.id, anna.id, 1, "belly", pounds("100")))
    assert made.cure is not None
    assert nitrite(made.cure).missing == ("cure",)
    made = batch(work.batches.say_cure(made, cure=pounds("1")))
    assert made.cure is not None
    # 1 lb of a 6.25 % mix on 100 lb: 625 ppm, the ceiling of dry-cured meat (9 CFR 424.21(c)).
    assert nitrite(made.cure).ppm == 625
    assert nitrite(made.cure).verdict == "within"


def test_bacon_in_a_dry_cured_batch_is_held_to_dry_cured_bacon(work: Work) -> None:
    anna, _bert = halves(work)
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, anna.id, 1, "whole_ham", pounds("60")))
    made = batch(work.batches.put_in(made.id, anna.id, 2, "belly_slab", pounds("40")))
    made = batch(work.batches.say_cure(made, cure=pounds("0.4")))
    assert made.cure is not None
    # 0.4 lb × 0.0625 × 1,000,000 ÷ 100 lb = 250 ppm: under 625, over dry-cured bacon's 200.
    check = nitrite(made.cure)
    assert (check.bacon_as, check.verdict, check.ppm) == ("bacon_dry", "above_ceiling", 250)
    belly = made.standing[1]
    made = batch(work.batches.take_out(belly.id, "of another recipe"))
    assert made.cure is not None
    assert nitrite(made.cure).bacon_as is None


def test_what_keeps_a_batch_from_moving(work: Work) -> None:
    anna, _bert = halves(work)
    made = work.batches.begin(recipe(work).id)
    assert work.batches.move(made, "curing") == Refused("empty")
    stale = made
    made = batch(work.batches.put_in(made.id, anna.id, 1, "belly", pounds("30")))
    assert work.batches.put_in(made.id, anna.id, 1, "belly", pounds("0")) == Refused("not_positive")
    assert work.batches.move(made, "done") == Refused("out_missing")
    made = batch(work.batches.move(made, "curing"))
    late = work.batches.put_in(made.id, anna.id, 1, "belly", pounds("3"))
    assert late == Refused("not_gathering", {"state": "curing"})
    assert work.batches.move(made, "gathering") == Refused("reason_missing")
    assert batch(work.batches.move(made, "gathering", "one belly forgotten")).state == "gathering"
    assert isinstance(work.batches.say_cure(stale, cure=None), StaleEdit)


def test_fat_from_elsewhere_names_its_source(work: Work) -> None:
    anna, _bert = halves(work)
    made = work.batches.begin(recipe(work).id)
    batch(work.batches.put_in(made.id, anna.id, 1, "trim", pounds("40")))
    assert work.batches.add(made.id, "pork fat", pounds("10"), " ") == Refused("source_missing")
    made = batch(work.batches.add(made.id, "pork fat", pounds("10"), "box 4417, inspected"))
    made = batch(work.batches.move(made, "done", out=pounds("49")))
    assert made.yielded == Fraction(49, 50)
    # The finished weight is the owner's, whatever was added.
    assert work.batches.shares(made) == {anna.id: pounds("49")}


def test_what_was_added_is_taken_out_with_a_reason_and_nothing_else_of_it_changes(
    work: Work,
) -> None:
    made = work.batches.begin(recipe(work).id)
    made = batch(work.batches.add(made.id, "pork fat", pounds("4"), "box 4417, inspected"))
    [fat] = made.added
    assert work.batches.take_added_out(fat.id, " ") == Refused("reason_missing")
    made = batch(work.batches.take_added_out(fat.id, "wrong batch"))
    assert (made.added, made.whole_ng) == ((), 0)
    assert work.batches.take_added_out(fat.id, "again") == Refused("already_void")
    kept = work._connection.execute(text("SELECT what, void FROM batch_added")).all()  # pyright: ignore
    assert [tuple(row) for row in kept] == [("pork fat", "wrong batch")]
    with pytest.raises(IntegrityError, match="rows are locked"):
        work._connection.execute(text("UPDATE batch_added SET weight_count = 5"))  # pyright: ignore


def test_what_was_added_before_it_could_be_taken_out_stands(work: Work, store_path: Path) -> None:
    """Revision 0023, there and back, with a row that was kept before."""
    made = work.batches.begin(recipe(work).id)
    made = batch(work.batches.add(made.id, "pork fat", pounds("4"), "box 4417, inspected"))
    work.commit()
    engine = file_engine(store_path, foreign_keys=False)
    migrate.downgrade(engine, "0022")
    with pytest.raises(IntegrityError, match="locked"), engine.begin() as connection:
        connection.execute(text("UPDATE batch_added SET source = ''"))
    migrate.upgrade(engine)
    engine.dispose()
    again = open_store(store_path, keep_copies=False)
    with again.read() as reading:
        found = reading.batches.get(made.id)
    again.close()
    assert found is not None
    assert found.added == made.added


@pytest.mark.parametrize("table", ["batch_meat", "batch_stages", "batch_added"])
def test_what_went_in_is_never_rewritten(work: Work, table: str) -> None:
    anna, _bert = halves(work)
    made = work.batches.begin(recipe(work).id)
    work.batches.put_in(made.id, anna.id, 1, "belly", pounds("30"))
    work.batches.add(made.id, "pork fat", pounds("4"), "box 4417, inspected")
    with pytest.raises(IntegrityError, match="rows are locked"):
        work._connection.execute(text(f"DELETE FROM {table}"))  # pyright: ignore


def test_what_was_written_under_own_names_becomes_a_recipe(store_path: Path) -> None:
    store = open_store(store_path, keep_copies=False)
    store.sign_on("Wilma", "Wrap")
    store.close()
    engine = file_engine(store_path, foreign_keys=False)
    migrate.downgrade(engine, "0006")
    with engine.begin() as connection:
        for key, words in (
            ("recipe.seasoned.ingredients", "pork, salt, mustard flour"),
            ("recipe.seasoned.allergens", "mustard, soy"),
            ("recipe.cured.ingredients", "salt, sodium nitrite"),
        ):
            connection.execute(
                text("INSERT INTO own_names (language, key, text) VALUES ('en', :key, :words)"),
                {"key": key, "words": words},
            )
    engine.dispose()
    store = open_store(store_path, keep_copies=False)
    with store.read() as work:
        cured, seasoned = work.recipes.all()
        assert work.shop.own_names("en") == {}
    store.close()
    assert [one.name for one in seasoned.ingredients] == ["pork", "salt", "mustard flour"]
    assert allergens(seasoned) == ("mustard, soy",)
    assert allergens(cured) is None
