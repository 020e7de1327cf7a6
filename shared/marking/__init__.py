"""What labels and tags must say, and what their barcodes carry."""
