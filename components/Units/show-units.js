showUnits();
