"""Answers on paper: the calculation sheet (HTML, PDF) and the workbook. Nothing is calculated here that a rule has not."""
