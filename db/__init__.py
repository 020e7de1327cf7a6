"""The store: tables, revisions and queries; gives and takes shared values."""
