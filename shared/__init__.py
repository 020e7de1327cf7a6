"""The trade's rules: plain values and functions, no window, no store, no paper."""
