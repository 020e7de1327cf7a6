"""From an owner's choices to the plan the block cuts by."""
