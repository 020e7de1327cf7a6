"""What the shop keeps: people, customers, lots, animals, orders, packages, papers and money."""
