"""Counter: bookings, cut orders, handing over, payment."""
