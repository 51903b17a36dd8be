// tables
