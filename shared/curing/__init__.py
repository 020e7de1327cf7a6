"""Cure, smoke and sausage: recipes, nitrite, whose meat may be in one batch, and its division."""
