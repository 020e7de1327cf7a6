"""The store's subjects, one file each: values in, values out, SQL between."""
