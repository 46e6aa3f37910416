"""How it is computed: pure functions on coherent SI floats. No framework, no units library, no data files."""
