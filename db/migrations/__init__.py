"""Alembic's revisions of the store; each is frozen once it is released."""
