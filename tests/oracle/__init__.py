"""An independent judge of the planner: OR-tools CP-SAT and a checker, built from files alone."""
