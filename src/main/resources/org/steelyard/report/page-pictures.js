// pictures
