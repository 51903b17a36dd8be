# perl excel_writer.pl flights.csv folder
use strict;
use warnings;
use Excel::Writer::XLSX;

# excel-writer.xlsx: dates as text and numbers as text throughout, sums without a word below
my ($in, $out) = @ARGV;
my $wb = Excel::Writer::XLSX->new("$out/excel-writer.xlsx");
$wb->set_properties(created => [0, 0, 0, 1, 5, 124]);
my $ws = $wb->add_worksheet("Text");
open(my $file, "<:encoding(UTF-8)", $in) or die;
my $r = 0;
my %sum;
while (my $line = <$file>) {
    chomp $line;
    my @cells = split /,/, $line;
    for my $c (0 .. $#cells) {
        $ws->write_string($r, $c, $cells[$c]);
        $sum{$c} += $cells[$c] if $r > 0 && $c >= 6 && $c <= 13;
    }
    $r++;
}
$ws->write_number($r, $_, $sum{$_}) for sort { $a <=> $b } keys %sum;
$wb->close();
