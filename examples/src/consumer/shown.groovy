// Did Surefire run the rehearsals, and does it show each by its title?
def results = new File(basedir, 'target/surefire-reports').listFiles().findAll { it.name ==~ /TEST-.*\.xml/ }
def cases = results.collectMany { new groovy.xml.XmlSlurper().parse(it).testcase.collect { it } }
def titles = cases.collect { it.@name.text() }

assert titles.contains('a leaf marked 0.10 that measures 0.11 proves nothing about 0.10')
assert titles.contains('a_leaf_that_is_not_what_is_stamped_on_it_proves_nothing')
assert titles.size() > 100
