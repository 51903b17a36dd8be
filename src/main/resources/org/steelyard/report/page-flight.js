// flight
