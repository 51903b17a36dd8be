// season
